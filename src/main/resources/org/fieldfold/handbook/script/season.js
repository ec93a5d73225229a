// The season's warmth: days that the reader wrote down, [day, lowest, highest, unit], kept on this telephone.
function warmDays() {
    return recall('days', []);
}

function warmNotes() {
    return warmDays().map(function (day) {
        return { day: day[0], page: 'reckoners', name: say('season.note'), text: day[1] + ' / ' + day[2] + ' °' + day[3], place: '' };
    });
}

// A sum in the units that were chosen, or in both.
function heat(sum, unit, digits) {
    const own = say('heat', shown(sum, digits), unit);
    const other = say('heat', shown(unit === 'F' ? sum / 1.8 : sum * 1.8, digits), unit === 'F' ? 'C' : 'F');
    return units() === '' ? own + ' (' + other + ')' : (units() === 'c') === (unit === 'F') ? own : other;
}

// What the days say about every event of an entry that is summed in the same way.
function seasonInWords(events, from) {
    const model = events[0];
    const sum = seasonSum(model, warmDays(), from);
    if (sum.days === 0) {
        return [say('season.none', keptDay(from))];
    }
    const lines = [say(sum.days === 1 ? 'season.sum.1' : 'season.sum', heat(sum.total, model.unit, 0), sum.days, keptDay(from),
        keptDay(sum.last))];
    if (sum.missing > 0) {
        let first = from;
        while (warmDays().some(function (day) { return day[0] === first; })) {
            first = dayBehind(first, 1);
        }
        lines.push(say('season.missing', sum.missing, keptDay(first)));
    }
    events.forEach(function (event) {
        lines.push(say('season.' + saysOf(sum, event.sum), event.event, heat(event.sum, model.unit, 0),
            heat(event.sum - sum.total, model.unit, 0)));
    });
    return lines;
}

function sumsAs(model) {
    return [model.entry, model.start, model.biofix, model.lower, model.upper, model.method, model.cutoff].join();
}

function addSeason() {
    const section = document.querySelector('.p-season');
    if (!section) {
        return;
    }
    const groups = [];
    facts.models.forEach(function (model) {
        const same = groups.filter(function (group) { return sumsAs(group[0]) === sumsAs(model); })[0];
        if (same) {
            same.push(model);
        } else {
            groups.push([model]);
        }
    });
    const asked = recall('season', { which: 0 });
    const today = isoDay(new Date());
    const which = field('season-which', say('warmth.model'), { options: groups.map(function (group) {
        return group[0].entry + (group[0].biofix ? ': ' + group[0].biofix : '');
    }) });
    const from = field('season-from', say('season.from'), { type: 'date' });
    const day = field('season-day', say('season.day'), { type: 'date', value: today });
    const min = field('season-min', say('warmth.min'), {});
    const max = field('season-max', say('warmth.max'), {});
    const unit = field('season-unit', say('warmth.unit'), { options: ['°F', '°C'] });
    const output = make('div', { role: 'status', 'class': 'answer' });
    const list = make('ul', { 'class': 'days' });
    const summary = make('summary', {});
    const more = make('div', {}, make('details', {}, summary, list), make('div', { 'class': 'more' },
        button(say('note.csv'), function () { handOver('days.csv', 'text/csv;charset=utf-8', asTable(warmNotes())); }),
        button(say('season.erase'), function () {
            forget('days');
            show();
        }, { 'class': 'quiet' })));
    const form = make('form', { 'class': 'reckon', 'aria-label': section.firstElementChild.textContent },
        which.row, from.row, day.row, min.row, max.row, unit.row, make('button', { type: 'submit' }, say('season.keep')), output, more);
    which.input.value = groups[asked.which] ? asked.which : 0;
    unit.input.value = units() === 'm' ? 1 : 0;

    function begin() {
        const start = groups[which.input.value][0].start;
        from.input.value = asked.which === Number(which.input.value) && asked.from
            ? asked.from : start ? today.slice(0, 5) + start : '';
    }

    function show() {
        const days = warmDays();
        empty(output);
        (from.input.value ? seasonInWords(groups[which.input.value], from.input.value) : [say('season.ask')])
            .forEach(function (line, i) { output.appendChild(make('p', {}, i === 0 ? make('b', {}, line) : line)); });
        summary.textContent = say('season.list', days.length);
        empty(list);
        warmNotes().forEach(function (note, i) {
            list.appendChild(make('li', {}, make('span', {}, keptDay(note.day) + ' · ' + note.text), button(say('note.erase'), function () {
                days.splice(i, 1);
                keep('days', days);
                show();
            }, { 'aria-label': say('note.erase.which', keptDay(note.day), note.text) })));
        });
        more.hidden = days.length === 0;
        showNotes();
    }

    which.input.addEventListener('change', begin);
    form.addEventListener('change', function (event) {
        if (event.target === which.input || event.target === from.input) {
            asked.which = Number(which.input.value);
            asked.from = from.input.value;
            keep('season', asked);
            show();
        }
    });
    form.addEventListener('submit', function (event) {
        event.preventDefault();
        const low = parseFloat(min.input.value);
        const high = parseFloat(max.input.value);
        if (!day.input.value || !(low <= high)) {
            tell(low > high ? say('warmth.order') : say('reckon.fill'));
            return;
        }
        const days = warmDays().filter(function (one) { return one[0] !== day.input.value; });
        days.push([day.input.value, low, high, ['F', 'C'][unit.input.value]]);
        days.sort();
        if (!keep('days', days)) {
            tell(say('note.full'));
            return;
        }
        day.input.value = dayBehind(day.input.value, 1);
        min.input.value = max.input.value = '';
        show();
    });
    section.insertBefore(form, section.children[1]);
    begin();
    show();
}
