// Quantities stand on the pages in both systems, one in brackets; chosen once, one of them stays: m-etric or c-ustomary.
function units() {
    return recall('units', '');
}

function showUnits() {
    const chosen = units();
    document.documentElement.setAttribute('data-units', chosen);
    all('m-,c-').forEach(function (quantity) {
        const both = quantity.both = quantity.both || quantity.textContent;
        const bracket = both.indexOf(' (');
        quantity.textContent = chosen === '' ? both : quantity.localName.charAt(0) === chosen
            ? both.slice(0, bracket) : both.slice(bracket + 2, -1);
    });
}

function addUnits() {
    const choices = [];
    all('.k-start .top, #reckoners .top').forEach(function (top) {
        const choice = make('select', { id: top.closest('.k-start') ? 'units-start' : 'units-reckoners' });
        ['', 'm', 'c'].forEach(function (system) {
            choice.appendChild(make('option', { value: system }, say('units.' + (system || 'both'))));
        });
        choice.addEventListener('change', function () {
            keep('units', choice.value);
            showUnits();
            show();
        });
        choices.push(choice);
        top.appendChild(make('div', { 'class': 'field units' }, make('label', { 'for': choice.id }, say('units')), choice));
    });
    function show() {
        choices.forEach(function (choice) { choice.value = units(); });
    }
    show();
    if (units() !== '') {
        showUnits();
    }
}
