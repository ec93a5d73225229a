// Field notes: kept on this telephone, handed over only by the reader's own hand.
function notes() {
    return recall('notes', []);
}

function nameOf(page) {
    const title = page.querySelector('.title');
    return title ? title.textContent : '';
}

// A note begun on an entry's page: it opens the form with what is known.
// count, where it is one: key, total, units.
function noteDown(page, words, count) {
    const kept = notes();
    kept.push({ day: isoDay(new Date()), page: page.id, name: nameOf(page), text: words, place: '', count: count });
    tell(keep('notes', kept) ? say('note.kept', nameOf(page)) : say('note.full'));
    showNotes();
}

function tell(words) {
    const old = document.getElementById('told');
    const told = old || document.body.appendChild(make('p', { id: 'told', role: 'status' }));
    told.textContent = words;
    told.className = 'told';
    setTimeout(function () { told.className = 'told unseen'; }, 4000);
}

// The days of the season's warmth go with the notes.
function toHandOver() {
    return notes().concat(warmNotes());
}

// Kept counts, the oldest first.
function keptCounts() {
    return notes().filter(function (note) { return note.count && facts.counts[note.count.key]; });
}

function noteLine(note) {
    return say('note.line', keptDay(note.day), note.name, note.text, note.place || '–');
}

function asText(list) {
    return list.map(noteLine).concat(facts.edition).join('\n');
}

// Comma-separated values (RFC 4180). A sign that a spreadsheet would reckon with is disarmed.
function asTable(list) {
    function cell(text) {
        const plain = /^[=+\-@\t\r]/.test(text) ? "'" + text : text;
        return '"' + plain.split('"').join('""') + '"';
    }
    return [['day', 'entry', 'seen', 'place', 'page', 'edition']].concat(list.map(function (note) {
        return [note.day, note.name, note.text, note.place, note.page, String(facts.year)];
    })).map(function (row) { return row.map(cell).join(','); }).join('\r\n') + '\r\n';
}

function handOver(name, type, text) {
    const way = make('a', { href: URL.createObjectURL(new Blob([text], { type: type })), download: name });
    document.body.appendChild(way);
    way.click();
    document.body.removeChild(way);
}

function copy(text) {
    const field = make('textarea', { 'aria-hidden': 'true' });
    field.value = text;
    document.body.appendChild(field);
    field.select();
    let done = false;
    try {
        done = document.execCommand('copy');
    } catch (unable) {
        done = false;
    }
    document.body.removeChild(field);
    tell(done ? say('copied') : say('not-copied'));
}

let showNotes = function () {};

function addNotes() {
    const section = document.querySelector('.p-notes');
    if (!section) {
        return;
    }
    const text = make('textarea', { id: 'note-text', rows: 3 });
    const place = make('input', { id: 'note-place', type: 'text', autocomplete: 'off' });
    const name = make('input', { id: 'note-name', type: 'text', autocomplete: 'off' });
    const list = make('ul', { 'class': 'notes' });
    const some = make('div', { 'class': 'more' },
        button(say('note.text'), function () { handOver('notes.txt', 'text/plain;charset=utf-8', asText(toHandOver())); }),
        button(say('note.csv'), function () { handOver('notes.csv', 'text/csv;charset=utf-8', asTable(toHandOver())); }),
        button(say('copy'), function () { copy(asText(toHandOver())); }),
        button(say('note.erase-all'), function () {
            forget('notes');
            showNotes();
        }, { 'class': 'quiet' }));
    const form = make('form', { 'class': 'reckon' },
        make('div', { 'class': 'field' }, make('label', { 'for': 'note-name' }, say('note.name')), name),
        make('div', { 'class': 'field' }, make('label', { 'for': 'note-text' }, say('note.seen')), text),
        make('div', { 'class': 'field' }, make('label', { 'for': 'note-place' }, say('note.place')), place),
        make('button', { type: 'submit' }, say('note.keep')));
    form.addEventListener('submit', function (event) {
        event.preventDefault();
        if (name.value.trim() + text.value.trim() === '') {
            return;
        }
        const kept = notes();
        kept.push({ day: isoDay(new Date()), page: '', name: name.value, text: text.value, place: place.value });
        tell(keep('notes', kept) ? say('note.kept', name.value) : say('note.full'));
        form.reset();
        showNotes();
    });
    showNotes = function () {
        const kept = notes();
        empty(list);
        kept.forEach(function (note, i) {
            list.appendChild(make('li', {}, make('span', {}, noteLine(note)),
                button(say('note.erase'), function () {
                    const rest = notes();
                    rest.splice(i, 1);
                    keep('notes', rest);
                    showNotes();
                }, { 'aria-label': say('note.erase.which', keptDay(note.day), note.name) })));
        });
        some.hidden = toHandOver().length === 0;
    };
    [form, list, some, make('p', { 'class': 'small' }, say('note.where'))].forEach(function (part) {
        section.appendChild(part);
    });
    showNotes();
}
