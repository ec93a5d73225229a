// Keeps the whole handbook on the telephone from the first visit on. What is kept is served first; a new edition comes
// with other facts in front, which a browser notices at the next visit with a signal.
self.addEventListener('install', event => event.waitUntil(
    caches.open(kept.name).then(cache => cache.addAll(kept.files)).then(() => self.skipWaiting())));

self.addEventListener('activate', event => event.waitUntil(
    caches.keys().then(names => Promise.all(names
        .filter(name => name.startsWith(kept.of) && name !== kept.name).map(name => caches.delete(name))))
        .then(() => self.clients.claim())));

self.addEventListener('fetch', event => {
    if (event.request.method === 'GET' && new URL(event.request.url).origin === self.location.origin) {
        event.respondWith(caches.open(kept.name).then(cache => cache.match(event.request, { ignoreSearch: true }))
            .then(found => found || fetch(event.request)));
    }
});
