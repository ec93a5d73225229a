// The reckoners: forms over the tables of the page that has them.
function addReckoners() {
    if (!document.querySelector('.p-warmth')) {
        return;
    }
    const models = facts.models;
    addForm('warmth', [
        ['model', say('warmth.model'), { options: models.map(function (model) { return model.entry + ': ' + model.event; }) }],
        ['unit', say('warmth.unit'), { options: units() === 'm' ? ['°C', '°F'] : ['°F', '°C'] }],
        ['min', say('warmth.min'), {}], ['max', say('warmth.max'), {}], ['next', say('warmth.next'), {}]
    ], function (values) {
        const model = models[values[0]];
        const unit = (units() === 'm') === (values[1] === 0) ? 'C' : 'F';
        const temperatures = values.slice(2).map(function (degrees) { return degreesIn(model.unit, unit, degrees); });
        if (temperatures[0] > temperatures[1]) {
            return [say('warmth.order')];
        }
        const warmth = degreeDays(model, temperatures[0], temperatures[1], temperatures[2]);
        return [heat(warmth, model.unit, 1), say('warmth.of', heat(model.sum, model.unit, 0), model.event)];
    });
    const recounts = addForm('recount', [
        ['first', say('recount.first'), { min: 0, step: 1, inputmode: 'numeric' }],
        ['second', say('recount.second'), { min: 0, step: 1, inputmode: 'numeric' }],
        ['days', say('recount.days'), { min: 1, value: 3 }],
        ['act', say('recount.act'), { min: 1, step: 1, inputmode: 'numeric' }]
    ], function (values) {
        if (values[0] + values[1] === 0 || values[2] <= 0 || values[0] < 0 || values[1] < 0 || values[3] <= 0) {
            return [say('recount.nothing')];
        }
        return recountInWords(values[0], values[1], values[2], values[3]);
    });
    offerCounts(recounts);
    addForm('cover', [
        ['shape', say('cover.shape'), { options: [say('cover.half'), say('cover.flat'), say('cover.legs')] }],
        ['width', say('cover.width'), { min: 0, value: 4 }], ['more', say('cover.more'), { min: 0, value: 1 }],
        ['length', say('cover.length'), { min: 0, value: 50 }], ['spacing', say('cover.spacing'), { min: 0, value: 4 }],
        ['depth', say('cover.depth'), { min: 0, value: 1 }], ['edge', say('cover.edge'), { min: 0, value: 1 }]
    ], function (values) {
        if (!(values[1] > 0 && values[3] > 0 && values[4] > 0) || values.some(function (value) { return value < 0; })
            || values[0] === 1 && values[2] === 0) {
            return [say('reckon.above')];
        }
        const cover = tunnel(bow(['half-circle', 'flat', 'legged'][values[0]], values[1], values[2]), values[3],
            values[4], values[5], values[6]);
        return [say('cover.hoops', cover.hoops, shown(cover.stock, 2)),
            say('cover.sheet', shown(cover.width, 2), shown(cover.length, 2))];
    });
    addForm('net', [['hole', say('net.hole'), { min: 0, value: units() === 'c' ? 0.05 : 1.3 }],
        ['unit', say('units'), { options: units() === 'c' ? ['in', 'mm'] : ['mm', 'in'] }]], function (values) {
        const stops = netStops((units() === 'c') === (values[1] === 0) ? values[0] * 25.4 : values[0], facts.bodies);
        const rest = facts.bodies.map(function (body) { return body[0]; })
            .filter(function (name) { return stops.indexOf(name) < 0; });
        return [say('net.stops', stops.join(', ') || say('net.none')), say('net.through', rest.join(', ') || say('net.none')),
            say('net.unknown')];
    });
    addForm('border', [
        ['width', say('border.width'), { min: 0, value: 200 }], ['length', say('border.length'), { min: 0, value: 200 }],
        ['share', say('border.share'), { min: 0, max: 100, value: 10 }]
    ], function (values) {
        return values[0] > 0 && values[1] > 0 && values[2] >= 0 && values[2] <= 100
            ? [say('border.answer', shown(borderFor(values[0], values[1], values[2] / 100), 2))] : [say('reckon.above')];
    });
    addForm('waiting', [
        ['material', say('waiting.material'), { options: facts.materials.map(function (one) { return one[0]; }) }],
        ['finished', say('waiting.finished'), { type: 'datetime-local', value: isoDay(new Date()) + 'T08:00' }]
    ], function (values) {
        return waitInWords(facts.materials[values[0]], values[1]);
    });
}

// actAt: null where the counts are of a part of the sample only
function recountInWords(first, second, days, actAt) {
    const two = recount(first, second, days, actAt === null ? Infinity : actAt);
    const lines = [actAt !== null && second >= actAt ? say('recount.there') : say('recount.' + two.trend)];
    if (isFinite(two.growth)) {
        lines.push(say('recount.growth', shown(100 * (Math.exp(two.growth) - 1), 0)));
    }
    if (two.doubling !== null) {
        lines.push(say('recount.doubling', shown(two.doubling, 1)));
    }
    if (two.days !== null && two.days > 0 && isFinite(two.days)) {
        lines.push(say('recount.until', shown(two.days, 1), two.soonest === null ? '–' : shown(two.soonest, 1)));
    }
    return lines;
}

// Fills the form from a kept count, and from a later one of the same kind where there is one.
function offerCounts(form) {
    const kept = keptCounts();
    if (!form || kept.length === 0) {
        return;
    }
    const choice = field('recount-kept', say('recount.kept'), { options: ['–'].concat(kept.map(function (note) {
        return note.name + ' · ' + keptDay(note.day) + ' · ' + note.count.total + ' / ' + note.count.units;
    })) });
    choice.input.addEventListener('change', function () {
        const first = kept[choice.input.value - 1];
        if (first) {
            const second = kept.filter(function (note) {
                return note.count.key === first.count.key && note.count.units === first.count.units && note.day > first.day;
            })[0];
            const card = facts.counts[first.count.key];
            form.fill([first.count.total, second ? second.count.total : '',
                Math.max(1, daysBetween(first.day, second ? second.day : isoDay(new Date()))),
                first.count.units === card.units ? card.act : '']);
        }
    });
    form.form.insertBefore(choice.row, form.form.firstChild);
}

// The waiting times of an entry's own materials stand there already, behind its caution: this adds only the days.
function addDates() {
    all('.tier3 .measures').forEach(function (list, at) {
        const own = facts.materials.filter(function (material) {
            return all('li > p > b', list).some(function (name) { return name.textContent === material[0]; });
        });
        if (own.length > 0) {
            const item = make('li', {}, button(say('waiting.dates'), function () {
                const finished = field('dates-' + at, say('waiting.finished'), { type: 'datetime-local', value: isoDay(new Date()) + 'T08:00' });
                const answer = make('div', { role: 'status', 'class': 'answer' });
                function show() {
                    empty(answer);
                    (finished.input.value ? own : []).forEach(function (material) {
                        answer.appendChild(make('p', {}, make('b', {}, material[0]), ': ' + waitInWords(material, finished.input.value).join(' · ')));
                    });
                }
                finished.input.addEventListener('input', show);
                empty(item).appendChild(make('div', { 'class': 'reckon' }, finished.row, answer));
                show();
            }));
            list.appendChild(item);
        }
    });
}

function waitInWords(material, finished) {
    const open = opens(new Date(finished), material.slice(1, 3), material.slice(3, 5));
    return [say('waiting.entry', moment(open.entry[1])), say('waiting.harvest', moment(open.harvest[1])),
        say('waiting.label', moment(open.entry[0]), moment(open.harvest[0]))];
}

function moment(time) {
    return dayInWords(time) + ', ' + ('0' + time.getHours()).slice(-2) + ':' + ('0' + time.getMinutes()).slice(-2);
}
