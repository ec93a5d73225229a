// The search field with its list: a combobox as ARIA 1.2 describes it.
function addFinder(host) {
    let index = null;
    let marked = -1;
    let before = null;
    const list = make('ul', { role: 'listbox', id: 'found', 'aria-label': say('found'), hidden: '' });
    const status = make('p', { role: 'status', 'class': 'unseen' });
    const field = make('input', { type: 'search', id: 'find', role: 'combobox', 'aria-expanded': 'false',
        'aria-controls': 'found', 'aria-autocomplete': 'list', autocomplete: 'off', autocapitalize: 'off',
        spellcheck: 'false', enterkeyhint: 'go' });
    const close = button(say('close'), leaveBack, { 'class': 'quiet', hidden: '' });
    const box = make('div', { role: 'search', 'class': 'finder' },
        make('label', { 'for': 'find' }, say('find')), field, close, list, status);
    host.appendChild(box);

    function options() {
        return all('[role=option]', list);
    }

    function mark(number) {
        const shown = options();
        marked = shown.length === 0 ? -1 : (number + shown.length) % shown.length;
        shown.forEach(function (option, i) {
            option.setAttribute('aria-selected', String(i === marked));
        });
        if (marked < 0) {
            field.removeAttribute('aria-activedescendant');
        } else {
            field.setAttribute('aria-activedescendant', shown[marked].id);
            if (shown[marked].scrollIntoView) {
                shown[marked].scrollIntoView({ block: 'nearest' });
            }
        }
    }

    function show() {
        index = index || new SearchIndex(facts.index);
        const text = field.value.trim();
        const found = text === '' ? [] : index.find(text, 12);
        empty(list);
        found.forEach(function (number, i) {
            const page = facts.pages[number];
            const option = make('li', { role: 'option', id: 'found-' + i, 'aria-selected': 'false' },
                make('b', {}, page[1]), ' ', make('small', {}, page[2]));
            option.addEventListener('click', function () { go(page[0]); });
            list.appendChild(option);
        });
        list.hidden = found.length === 0;
        field.setAttribute('aria-expanded', String(found.length > 0));
        marked = -1;
        field.removeAttribute('aria-activedescendant');
        status.textContent = text === '' ? '' : found.length === 0 ? say('found.none') : say('found.many', found.length);
        status.className = text !== '' && found.length === 0 ? 'none' : 'unseen';
    }

    function go(href) {
        leave();
        field.value = '';
        location.href = href;
    }

    function leave() {
        host.classList.remove('open');
        close.hidden = true;
        list.hidden = true;
        field.setAttribute('aria-expanded', 'false');
        field.blur();
    }

    // Back to where one was before.
    function leaveBack() {
        leave();
        if (before && before.isConnected) {
            before.focus({ preventScroll: true });
        }
    }

    function enter() {
        before = document.activeElement;
        host.classList.add('open');
        close.hidden = false;
        field.focus();
        field.select();
        if (field.value !== '') {
            show();
        }
    }

    field.addEventListener('input', show);
    field.addEventListener('focus', function () {
        host.classList.add('open');
        close.hidden = false;
    });
    field.addEventListener('keydown', function (event) {
        if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
            event.preventDefault();
            mark(event.key === 'ArrowDown' ? marked + 1 : marked < 0 ? -1 : marked - 1);
        } else if (event.key === 'Enter') {
            const shown = options();
            if (shown.length > 0) {
                event.preventDefault();
                shown[Math.max(0, marked)].click();
            }
        } else if (event.key === 'Escape') {
            event.preventDefault();
            if (field.value === '') {
                leaveBack();
            } else {
                field.value = '';
                show();
            }
        }
    });
    document.addEventListener('keydown', function (event) {
        const typing = /^(INPUT|TEXTAREA|SELECT)$/.test(event.target.tagName);
        if (event.key === '/' && !typing && !event.ctrlKey && !event.metaKey && !event.altKey) {
            event.preventDefault();
            enter();
        }
    });
    document.addEventListener('click', function (event) {
        if (!box.contains(event.target) && host.classList.contains('open') && !event.target.closest('.bar')) {
            leave();
        }
    });
    return enter;
}
