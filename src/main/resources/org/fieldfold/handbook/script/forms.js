// A small form over a table: it reckons at every key, and says nothing until it has all that it needs.
function field(id, label, attributes) {
    const name = 'reckon-' + id;
    let input;
    if (attributes.options) {
        input = make('select', { id: name });
        attributes.options.forEach(function (option, i) {
            input.appendChild(make('option', { value: i }, option));
        });
    } else {
        input = make('input', Object.assign({ id: name, type: 'number', inputmode: 'decimal', step: 'any' }, attributes));
    }
    return { input: input, row: make('div', { 'class': (attributes.options || []).length > 4 ? 'field wide' : 'field' },
        make('label', { 'for': name }, label), input) };
}

// fields: [id, label, attributes]; answer takes what was entered, in that order, and gives lines of text
function addForm(key, fields, answer) {
    const section = document.querySelector('.p-' + key);
    if (!section) {
        return null;
    }
    const made = fields.map(function (one) { return field(key + '-' + one[0], one[1], one[2]); });
    const output = make('div', { role: 'status', 'class': 'answer' });
    const form = make('form', { 'class': 'reckon', 'aria-label': section.firstElementChild.textContent });
    made.forEach(function (one) { form.appendChild(one.row); });
    form.appendChild(output);
    function reckon() {
        const values = made.map(function (one) {
            return one.input.type === 'number' || one.input.tagName === 'SELECT'
                ? one.input.value === '' ? NaN : Number(one.input.value) : one.input.value;
        });
        empty(output);
        if (values.some(function (value) { return value === '' || value !== value; })) {
            output.appendChild(make('p', {}, say('reckon.fill')));
            return;
        }
        answer(values).forEach(function (line, i) {
            output.appendChild(make('p', {}, i === 0 ? make('b', {}, line) : line));
        });
    }
    form.addEventListener('input', reckon);
    form.addEventListener('submit', function (event) {
        event.preventDefault();
        reckon();
    });
    section.insertBefore(form, section.children[1] || null);
    reckon();
    return { form: form, fill: function (values) {
        values.forEach(function (value, i) { made[i].input.value = value; });
        reckon();
    } };
}

// As many digits as are worth reading.
function shown(number, digits) {
    return String(Number(number.toFixed(digits)));
}
