// Recounts, covers, nets, borders and waiting times, with the compiler's formulas.

// Growth a day as an exponent, with Wilson's interval at 95 % around it, and days to the number to act at.
function recount(first, second, days, actAt) {
    const z = 1.959963984540054;
    const units = first + second;
    const share = second / units;
    const middle = share + z * z / (2 * units);
    const reach = z * Math.sqrt(share * (1 - share) / units + z * z / (4 * units * units));
    const low = second === 0 ? 0 : (middle - reach) / (1 + z * z / units);
    const high = first === 0 ? 1 : (middle + reach) / (1 + z * z / units);
    const growth = Math.log(second / first) / days;
    const slow = Math.log(low / (1 - low)) / days;
    const fast = Math.log(high / (1 - high)) / days;
    function until(rate) {
        return second >= actAt ? 0 : second === 0 || !(rate > 0) ? null : Math.log(actAt / second) / rate;
    }
    return {
        growth: growth, slow: slow, fast: fast,
        trend: slow > 0 ? 'rising' : fast < 0 ? 'falling' : 'unclear',
        doubling: growth > 0 && isFinite(growth) ? Math.log(2) / growth : null,
        days: !isFinite(growth) && second < actAt ? null : until(growth),
        soonest: until(fast)
    };
}

const SLACK = 1e-9;

// The next whole number up, unless a hair's breadth of rounding alone lifts it.
function wholeUp(exact) {
    const near = Math.round(exact);
    return Math.abs(exact - near) <= SLACK * Math.max(1, Math.abs(exact)) ? near : Math.ceil(exact);
}

// shape: half-circle, flat (half an ellipse of this height) or legged (a half circle on legs)
function bow(shape, width, more) {
    if (shape === 'half-circle') {
        return { height: width / 2, arc: Math.PI * width / 2 };
    }
    if (shape === 'legged') {
        return { height: width / 2 + more, arc: Math.PI * width / 2 + 2 * more };
    }
    // Ramanujan's second approximation of the perimeter (1914), halved
    const a = width / 2;
    const q = (a - more) * (a - more) / ((a + more) * (a + more));
    return { height: more, arc: Math.PI / 2 * (a + more) * (1 + 3 * q / (10 + Math.sqrt(4 - 3 * q))) };
}

function tunnel(hoop, length, spacing, depth, allowance) {
    return {
        hoops: wholeUp(length / spacing) + 1,
        stock: hoop.arc + 2 * depth,
        width: hoop.arc + 2 * allowance,
        length: length + 2 * (hoop.height + allowance)
    };
}

// bodies: id and largest hole, mm
function netStops(hole, bodies) {
    return bodies.filter(function (body) { return hole <= body[1]; }).map(function (body) { return body[0]; });
}

// The smaller root of 4 b^2 - 2 (X + Y) b + s X Y = 0.
function borderFor(width, length, share) {
    const sides = width + length;
    return (sides - Math.sqrt(Math.max(0, sides * sides - 4 * share * width * length))) / 4;
}

// From hours until people may go in and days until harvest, shortest and longest, on the clock of the wall.
function opens(finished, rei, phi) {
    function plus(hours, days) {
        return new Date(finished.getFullYear(), finished.getMonth(), finished.getDate() + days,
            finished.getHours() + hours, finished.getMinutes());
    }
    function later(one, other) {
        return one > other ? one : other;
    }
    const entry = [plus(rei[0], 0), plus(rei[1], 0)];
    return { entry: entry, harvest: [later(entry[0], plus(0, phi[0])), later(entry[1], plus(0, phi[1]))] };
}
