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
