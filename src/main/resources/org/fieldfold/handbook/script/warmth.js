// The warmth of a day in degree-days, from its lowest and highest temperature. As in the compiler's HeatModel.
const CURVES = {
    sine: {
        // Baskerville and Emin 1969; the six cases of Zalom et al. 1983 in one form
        between: function (c, a, b) {
            const middle = (a + b) / 2;
            const swing = (b - a) / 2;
            const t = Math.asin((c - middle) / swing);
            return ((middle - c) * (Math.PI / 2 - t) + swing * Math.cos(t)) / Math.PI;
        },
        share: function (c, a, b) {
            return 0.5 - Math.asin((c - (a + b) / 2) / ((b - a) / 2)) / Math.PI;
        }
    },
    triangle: {
        // Sevacherian, Stern and Mueller 1977
        between: function (c, a, b) {
            return (b - c) * (b - c) / (2 * (b - a));
        },
        share: function (c, a, b) {
            return (b - c) / (b - a);
        }
    }
};

function heatAbove(curve, c, a, b) {
    return c >= b ? 0 : c <= a ? (a + b) / 2 - c : curve.between(c, a, b);
}

function shareAbove(curve, c, a, b) {
    return c >= b ? 0 : c <= a ? 1 : curve.share(c, a, b);
}

function underCurve(model, curve, a, b) {
    const heat = heatAbove(curve, model.lower, a, b);
    if (model.upper === null) {
        return heat;
    }
    const above = heatAbove(curve, model.upper, a, b);
    if (model.cutoff === 'horizontal') {
        return Math.max(0, heat - above);
    }
    if (model.cutoff === 'intermediate') {
        return Math.max(0, heat - 2 * above);
    }
    return Math.max(0, heat - above - (model.upper - model.lower) * shareAbove(curve, model.upper, a, b));
}

// model: lower, upper (or null), method, cutoff; min not above max; next: the next day's lowest
function degreeDays(model, min, max, next) {
    function cut(temperature) {
        return model.upper === null ? temperature : Math.min(temperature, model.upper);
    }
    if (model.method === 'simple-average') {
        return Math.max(0, cut((min + max) / 2) - model.lower);
    }
    if (model.method === 'modified-average') {
        return (Math.max(model.lower, cut(min)) + Math.max(model.lower, cut(max))) / 2 - model.lower;
    }
    const curve = CURVES[model.method.split('-')[1]];
    const first = underCurve(model, curve, min, max);
    if (model.method.split('-')[0] === 'single') {
        return first;
    }
    return (first + underCurve(model, curve, Math.min(next, max), Math.max(next, max))) / 2;
}

function degreesIn(unit, own, degrees) {
    return unit === own ? degrees : unit === 'F' ? degrees * 1.8 + 32 : (degrees - 32) / 1.8;
}

// Days by hand: [day, lowest, highest, unit]. A day that is not there is missing and never cold, as in HandSum.
function seasonSum(model, written, from) {
    const days = {};
    const counted = [];
    written.forEach(function (day) {
        days[day[0]] = [day[1], day[2]].map(function (degrees) { return degreesIn(model.unit, day[3], degrees); });
        if (day[0] >= from) {
            counted.push(day[0]);
        }
    });
    counted.sort();
    const total = counted.reduce(function (sum, day) {
        return sum + degreeDays(model, days[day][0], days[day][1], (days[dayBehind(day, 1)] || days[day])[0]);
    }, 0);
    const last = counted[counted.length - 1];
    return { total: total, days: counted.length, last: last,
        missing: last ? daysBetween(from, last) + 1 - counted.length : 0 };
}

// What a sum says about an event: days that are missing may have brought it, but took no warmth away.
function saysOf(sum, event) {
    return sum.total >= event ? 'reached' : sum.missing > 0 || sum.days === 0 ? 'unknown' : 'not-yet';
}

function dayNumber(day) {
    return Date.UTC(Number(day.slice(0, 4)), Number(day.slice(5, 7)) - 1, Number(day.slice(8))) / 864e5;
}

function daysBetween(from, to) {
    return dayNumber(to) - dayNumber(from);
}

function dayBehind(day, days) {
    return new Date((dayNumber(day) + days) * 864e5).toISOString().slice(0, 10);
}
