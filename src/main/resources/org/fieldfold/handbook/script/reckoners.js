// The reckoners: forms over the tables of the page that has them.
function addReckoners() {
    if (!document.querySelector('.p-warmth')) {
        return;
    }
    const models = facts.models;
    addForm('warmth', [
        ['model', say('warmth.model'), { options: models.map(function (model) { return model.name; }) }],
        ['unit', say('warmth.unit'), { options: ['°F', '°C'] }],
        ['min', say('warmth.min'), {}], ['max', say('warmth.max'), {}], ['next', say('warmth.next'), {}]
    ], function (values) {
        const model = models[values[0]];
        const unit = ['F', 'C'][values[1]];
        function own(degrees) {
            return unit === model.unit ? degrees : unit === 'C' ? degrees * 1.8 + 32 : (degrees - 32) / 1.8;
        }
        const temperatures = values.slice(2).map(own);
        if (temperatures[0] > temperatures[1]) {
            return [say('warmth.order')];
        }
        const warmth = degreeDays(model, temperatures[0], temperatures[1], temperatures[2]);
        const other = model.unit === 'F' ? warmth / 1.8 : warmth * 1.8;
        return [say('warmth.answer', shown(warmth, 1), model.unit, shown(other, 1), model.unit === 'F' ? 'C' : 'F'),
            say('warmth.of', model.sum, model.event)];
    });
    addForm('recount', [
        ['first', say('recount.first'), { min: 0, step: 1, inputmode: 'numeric' }],
        ['second', say('recount.second'), { min: 0, step: 1, inputmode: 'numeric' }],
        ['days', say('recount.days'), { min: 1, value: 3 }],
        ['act', say('recount.act'), { min: 1, step: 1, inputmode: 'numeric' }]
    ], function (values) {
        if (values[0] + values[1] === 0 || values[2] <= 0 || values[0] < 0 || values[1] < 0 || values[3] <= 0) {
            return [say('recount.nothing')];
        }
        const two = recount(values[0], values[1], values[2], values[3]);
        const lines = [values[1] >= values[3] ? say('recount.there') : say('recount.' + two.trend)];
        if (isFinite(two.growth)) {
            lines.push(say('recount.growth', shown(100 * (Math.exp(two.growth) - 1), 0)));
        }
        if (two.doubling !== null) {
            lines.push(say('recount.doubling', shown(two.doubling, 1)));
        }
        if (two.days !== null && two.days > 0) {
            lines.push(say('recount.until', shown(two.days, 1), two.soonest === null ? '–' : shown(two.soonest, 1)));
        }
        return lines;
    });
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
    addForm('net', [['hole', say('net.hole'), { min: 0, value: 1.3 }]], function (values) {
        const stops = netStops(values[0], facts.bodies);
        const rest = facts.bodies.map(function (body) { return body[0]; })
            .filter(function (name) { return stops.indexOf(name) < 0; });
        return [say('net.stops', stops.join(', ') || say('net.none')), say('net.through', rest.join(', ') || say('net.none'))];
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
        const material = facts.materials[values[0]];
        const open = opens(new Date(values[1]), material.slice(1, 3), material.slice(3, 5));
        return [say('waiting.entry', moment(open.entry[1])), say('waiting.harvest', moment(open.harvest[1])),
            say('waiting.label', moment(open.entry[0]), moment(open.harvest[0]))];
    });
}

function moment(time) {
    return dayInWords(time) + ', ' + ('0' + time.getHours()).slice(-2) + ':' + ('0' + time.getMinutes()).slice(-2);
}
