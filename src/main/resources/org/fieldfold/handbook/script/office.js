// My office is chosen once; whatever is sent, the reader sends it.
function myOffice() {
    const chosen = recall('office', '');
    return facts.offices.filter(function (office) { return office.id === chosen; })[0] || facts.offices[facts.offices.length - 1];
}

function mail(subject, words) {
    return 'mailto:' + myOffice().email + '?subject=' + encodeURIComponent(subject) + '&body=' + encodeURIComponent(words);
}

function addOffice() {
    const section = document.querySelector('.p-request');
    if (!section) {
        return;
    }
    const choice = make('select', { id: 'my-office' });
    facts.offices.forEach(function (office) {
        const option = make('option', { value: office.id }, office.county === '' ? office.name : office.county + ' – ' + office.name);
        option.selected = office.id === myOffice().id;
        choice.appendChild(option);
    });
    const asked = ['crop', 'part', 'seen', 'count', 'place'].map(function (key) {
        const input = make('input', { id: 'ask-' + key, type: 'text', autocomplete: 'off' });
        return { key: key, input: input,
            row: make('div', { 'class': 'field' }, make('label', { 'for': input.id }, say('ask.' + key)), input) };
    });
    const call = make('a', { 'class': 'way' });
    const write = make('a', { 'class': 'way' });
    const message = make('a', { 'class': 'way' });
    function words() {
        return [say('ask.hello')].concat(asked.map(function (one) {
            return say('ask.' + one.key) + ': ' + (one.input.value || '–');
        }), say('ask.day') + ': ' + dayInWords(new Date()), say('ask.photo'), facts.edition).join('\n');
    }
    function show() {
        const office = myOffice();
        call.href = 'tel:' + office.phone;
        call.textContent = say('ask.call', office.name, office.phone);
        write.href = mail(say('ask.subject', asked[0].input.value || '–'), words());
        write.textContent = say('ask.write', office.email);
        message.href = 'sms:?&body=' + encodeURIComponent(words());
        message.textContent = say('ask.sms');
    }
    choice.addEventListener('change', function () {
        keep('office', choice.value);
        show();
        addAge();
    });
    const form = make('form', { 'class': 'reckon' },
        make('div', { 'class': 'field wide' }, make('label', { 'for': 'my-office' }, say('ask.office')), choice));
    asked.forEach(function (one) { form.appendChild(one.row); });
    form.addEventListener('input', show);
    form.addEventListener('submit', function (event) { event.preventDefault(); });
    section.appendChild(form);
    [call, write, message, button(say('copy'), function () { copy(words()); })].forEach(function (way) {
        section.appendChild(way);
    });
    show();
}

// What is wrong with an entry goes to the office with the entry's name and the edition.
function addFeedback() {
    all('.k-pest, .k-enemy, .k-practice').forEach(function (page) {
        const foot = page.querySelector('.foot');
        const way = make('a', { href: '#', 'class': 'feedback' }, say('feedback'));
        way.addEventListener('click', function () {
            way.href = mail(say('feedback.subject', page.id, facts.year), say('feedback.body', nameOf(page), page.id, facts.edition));
        });
        foot.appendChild(document.createTextNode(' '));
        foot.appendChild(way);
    });
}

// Past its day every page says so, by this telephone's clock. Nothing is hidden.
function addAge() {
    all('.expired').forEach(function (old) { old.parentNode.removeChild(old); });
    if (isoDay(new Date()) <= facts.until) {
        return;
    }
    all('.page > .head').forEach(function (head) {
        const office = myOffice();
        const line = make('p', { 'class': 'expired notice' }, make('b', {}, say('expired', facts.year, facts.untilWords)),
            ' ' + say('expired.ask') + ' ', make('a', { href: 'tel:' + office.phone }, office.phone));
        head.parentNode.insertBefore(line, head.nextSibling);
    });
}
