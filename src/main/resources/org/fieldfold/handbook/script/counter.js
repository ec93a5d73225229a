// Counting in the row: one large key, the row of stops, and what it comes to. Undo is always there.
function addCounters() {
    all('.card[data-count]').forEach(function (card) {
        const key = card.getAttribute('data-count');
        if (facts.counts[key]) {
            const open = button(say('count.here'), function () {
                const box = counter(card, key);
                open.parentNode.replaceChild(box, open);
                card.classList.add('counting');
                box.scrollIntoView();
                box.querySelector('.plus').focus({ preventScroll: true });
            }, { 'class': 'begin' });
            card.parentNode.insertBefore(open, card.nextSibling);
            if (recall('count.' + key, []).length > 0) {
                open.textContent = say('count.on');
            }
        }
    });
}

function counter(printed, first) {
    const page = printed.closest('.page');
    let key = recall('number.' + first, first);
    let card = facts.counts[key] || facts.counts[first];
    let taps = recall('count.' + first, []);
    const where = make('p', { 'class': 'where' });
    const row = make('ol', { 'class': 'row', 'aria-hidden': 'true' });
    const sum = make('b', {});
    const summed = make('span', {});
    const plusWords = make('small', {});
    const plus = make('button', { type: 'button', 'class': 'plus', onclick: function () { tap(1); } },
        make('b', {}, '+1'), ' ', plusWords);
    const ten = button('+10', function () { tap(10); });
    const next = button('', function () { tap(0); });
    const undo = button(say('count.undo'), function () {
        taps.pop();
        show();
    });
    const again = button(say('count.again'), function () {
        taps = [];
        show();
    }, { 'class': 'quiet' });
    const note = button(say('count.note'), function () {
        const so = tally(taps);
        noteDown(page, countInWords(), { key: key, total: so.total, units: looked(so) });
    }, { 'class': 'quiet' });
    const advice = make('div', { 'class': 'advice', role: 'status' });
    const after = make('div', { 'class': 'after' });
    const box = make('section', { 'class': 'counter', 'aria-label': say('count.here') });

    const numbers = facts.counts[first].numbers || [];
    if (numbers.length > 1) {
        const choice = make('select', { id: 'number-' + first.replace('/', '-') });
        numbers.forEach(function (other) {
            const option = make('option', { value: other }, facts.counts[other].label);
            option.selected = other === key;
            choice.appendChild(option);
        });
        choice.addEventListener('change', function () {
            key = choice.value;
            card = facts.counts[key];
            keep('number.' + first, key);
            show();
        });
        box.appendChild(make('div', { 'class': 'field' }, make('label', { 'for': choice.id }, say('count.which')), choice));
    }

    function tap(more) {
        taps.push(more);
        show();
    }

    function looked(so) {
        return Math.min(so.done + (so.now > 0 ? 1 : 0), stopsOf(card)) * card.each;
    }

    function countInWords() {
        const so = tally(taps);
        return say('count.words', so.total, card.counted, looked(so), looked(so) === 1 ? card.unit1 : card.unit);
    }

    // A count of the same thing on as many units, kept on an earlier day: offered, and taken only when it is asked for.
    function offerEarlier(so) {
        const today = isoDay(new Date());
        const before = keptCounts().filter(function (note) {
            return note.count.key === key && note.count.units === looked(so) && note.day < today;
        }).pop();
        if (before && before.count.total + so.total > 0) {
            after.appendChild(button(say('count.earlier', keptDay(before.day), before.count.total), function () {
                this.parentNode.replaceChild(make('div', { 'class': 'answer' }, ...recountInWords(before.count.total, so.total,
                    daysBetween(before.day, today), looked(so) === card.units ? card.act : null).map(function (line) {
                    return make('p', {}, line);
                })), this);
            }));
        }
    }

    function show() {
        const so = tally(taps);
        const stops = stopsOf(card);
        const result = verdict(card, so.done, so.total);
        const done = so.done >= stops;
        const full = card.presence && so.now >= card.each;
        keep('count.' + first, taps);
        empty(where).appendChild(document.createTextNode(say(card.trap ? 'count.trap' : 'count.stop',
            Math.min(so.done + 1, stops), stops, card.each, card.each === 1 ? card.unit1 : card.unit)));
        empty(row);
        for (let i = 0; i < stops; i++) {
            row.appendChild(make('li', { 'class': i < so.done ? 'done' : i === so.done && so.now > 0 ? 'half' : '' }));
        }
        sum.textContent = String(so.total);
        summed.textContent = say('count.so-far', card.counted);
        plusWords.textContent = full ? say('count.full') : say(card.presence ? 'count.tap-unit' : 'count.tap',
            card.unit1);
        plus.disabled = ten.disabled = done || full === true;
        ten.hidden = card.presence === true || card.act < 20;
        next.textContent = say(so.done + 1 >= stops ? 'count.last' : card.trap ? 'count.next-trap' : 'count.next');
        next.disabled = done;
        undo.disabled = again.disabled = taps.length === 0;
        advise(so, result, stops);
        box.setAttribute('data-verdict', result);
    }

    function advise(so, result, stops) {
        const lines = [];
        if (result === 'act') {
            lines.push(say('count.act'), say('count.act.why', countInWords(), card.act));
        } else if (result === 'leave') {
            const days = card.again || 3;
            lines.push(so.total === 0 ? say('count.nothing') : say('count.later', dayInWords(dayAfter(days))));
            lines.push(say('count.leave.why', countInWords(), card.act));
            if (so.total === 0 && card.again) {
                lines.push(say('count.later', dayInWords(dayAfter(days))));
            }
        } else {
            lines.push(say('count.go-on'), say('count.act-at', card.act, card.counted, card.units,
                card.units === 1 ? card.unit1 : card.unit));
            if (so.done > 0) {
                lines.push(say('count.pace', Math.round(so.total / so.done * stops)));
            }
            const line = !card.plan ? null
                : card.plan.filter(function (one) { return one[0] > so.done * card.each; })[0];
            if (line) {
                lines.push(say('count.line', line[0], line[1] === null ? '–' : line[1], line[2] === null ? '–' : line[2]));
            }
        }
        empty(advice);
        lines.forEach(function (line, i) {
            advice.appendChild(make('p', {}, i === 0 ? make('b', {}, line) : line));
        });
        empty(after);
        if (result !== 'go-on' || so.done >= stops) {
            offerEarlier(so);
        }
        if (result === 'act') {
            ways(page).forEach(function (way) { after.appendChild(way); });
        }
    }

    [where, row, make('div', { 'class': 'keys' }, make('p', { 'class': 'total' }, sum, ' ', summed), plus),
        make('div', { 'class': 'more' }, undo, next, ten, note, again), advice, after].forEach(function (part) {
        box.appendChild(part);
    });
    show();
    return box;
}

// Tiers 1 and 2 as they stand below, and tier 3 only by way of its caution.
function ways(page) {
    const found = [];
    [1, 2, 3].forEach(function (number) {
        const tier = page.querySelector('.p-act .tier' + number);
        if (tier) {
            tier.id = page.id + '--tier' + number;
            const head = tier.querySelector('.tierhead').textContent;
            found.push(make('a', { href: '#' + tier.id, 'class': 'way' }, number === 3 ? say('count.last-tier', head) : head));
        }
    });
    return found;
}
