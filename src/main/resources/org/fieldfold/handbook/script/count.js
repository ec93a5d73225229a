// What a count says so far. card: units, stops, each, act, presence and plan (rows of units, low, high) where it has them.
// taps: numbers that were added, and 0 for each stop that was finished.
function tally(taps) {
    const stops = [0];
    taps.forEach(function (tap) {
        if (tap === 0) {
            stops.push(0);
        } else {
            stops[stops.length - 1] += tap;
        }
    });
    return {
        stops: stops, done: stops.length - 1, now: stops[stops.length - 1],
        total: stops.reduce(function (sum, one) { return sum + one; }, 0)
    };
}

function stopsOf(card) {
    return !card.plan ? card.stops : Math.ceil(card.plan[card.plan.length - 1][0] / card.each);
}

// act, leave or go-on. A total never falls, so a number that is reached early stays reached.
function verdict(card, done, total) {
    if (!card.plan) {
        return total >= card.act ? 'act' : done >= card.stops ? 'leave' : 'go-on';
    }
    const looked = done * card.each;
    const last = card.plan[card.plan.length - 1];
    // what is too many for more units is too many for these; what is few enough for fewer units is so for these
    const next = card.plan.filter(function (row) { return row[0] >= looked; })[0] || last;
    const passed = card.plan.filter(function (row) { return row[0] <= looked; }).pop();
    if (next[2] !== null && total >= next[2] || total >= last[2]) {
        return 'act';
    }
    return passed && passed[1] !== null && total <= passed[1] ? 'leave' : 'go-on';
}
