// Where the reader was, which pages are kept, and which part of a page is in sight.
function visiblePage() {
    const aimed = location.hash.length > 1 ? document.getElementById(decodeURIComponent(location.hash.slice(1))) : null;
    return aimed && aimed.closest('.page') || document.querySelector('.page');
}

function hrefOf(page) {
    return facts.oneFile ? '#' + page.id : page.id + '.html';
}

function addMemory() {
    const start = document.querySelector('.k-start');
    const before = recall('place', null);
    if (start && before && visiblePage() === start) {
        const top = start.querySelector('.top');
        top.insertBefore(make('p', { 'class': 'resume' }, make('a', { 'class': 'way', href: before.href },
            say('resume', before.name))), top.querySelector('.tiles'));
        all('.p-contents a', start).forEach(function (link) {
            if (link.getAttribute('href') === before.href) {
                link.setAttribute('aria-current', 'page');
            }
        });
    }
    function remember() {
        const page = visiblePage();
        if (page && !page.classList.contains('k-start')) {
            keep('place', { href: hrefOf(page), name: nameOf(page) });
        }
    }
    window.addEventListener('hashchange', remember);
    remember();
    addBookmarks(start);
    addMarks();
}

function addBookmarks(start) {
    const list = make('p', { 'class': 'kept' });
    function kept() {
        return recall('kept', []);
    }
    function isKept(page) {
        return kept().some(function (one) { return one[0] === hrefOf(page); });
    }
    function show() {
        empty(list).appendChild(make('b', {}, say('kept')));
        kept().forEach(function (one) {
            list.appendChild(make('a', { 'class': 'way', href: one[0] }, one[1]));
        });
        list.hidden = kept().length === 0;
    }
    if (start) {
        const tiles = start.querySelector('.tiles');
        tiles.parentNode.insertBefore(list, tiles.nextSibling);
        show();
    }
    all('.page:not(.k-start)').forEach(function (page) {
        const press = button(say('keep'), function () {
            const rest = kept().filter(function (one) { return one[0] !== hrefOf(page); });
            keep('kept', isKept(page) ? rest : rest.concat([[hrefOf(page), nameOf(page)]]));
            press.setAttribute('aria-pressed', String(isKept(page)));
            show();
        }, { 'aria-pressed': String(isKept(page)) });
        const row = make('div', { 'class': 'more' }, press,
            button(say('count.note'), function () { noteDown(page, ''); }));
        page.insertBefore(row, page.querySelector('.foot'));
    });
}

// Marks the way to the part that is in sight.
function addMarks() {
    if (!window.IntersectionObserver) {
        return;
    }
    const ways = {};
    all('.jump a').forEach(function (way) { ways[way.getAttribute('href').split('#')[1]] = way; });
    const observer = new IntersectionObserver(function (seen) {
        seen.forEach(function (one) {
            const way = ways[one.target.id];
            if (way && one.isIntersecting) {
                all('[aria-current]', way.parentNode).forEach(function (other) { other.removeAttribute('aria-current'); });
                way.setAttribute('aria-current', 'true');
            }
        });
    }, { rootMargin: '-20% 0px -70% 0px' });
    Object.keys(ways).forEach(function (id) {
        const part = document.getElementById(id);
        if (part) {
            observer.observe(part);
        }
    });
}
