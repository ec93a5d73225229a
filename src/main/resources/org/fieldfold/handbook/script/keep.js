// A visited site stays readable without a signal: a worker keeps the folder. From storage there is nothing to keep.
function addKeeper() {
    if (!facts.oneFile && 'serviceWorker' in navigator && /^http/.test(location.protocol)) {
        const manifest = document.createElement('link');
        manifest.rel = 'manifest';
        manifest.href = 'handbook.webmanifest';
        document.head.appendChild(manifest);
        navigator.serviceWorker.register('worker.js').catch(function () {
            // without it the handbook is read as any other site
        });
    }
}
