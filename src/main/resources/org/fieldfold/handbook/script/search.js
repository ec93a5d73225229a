// Finds pages by the beginnings of words. Terms stand sorted, each as the number of letters that it shares
// with the one before, its other letters, and the pages that have it in a name and in the text, as differences.
function SearchIndex(front) {
    const words = [];
    const named = [];
    const told = [];
    let before = '';
    front.split(';').forEach(function (entry) {
        if (entry === '') {
            return;
        }
        const parts = entry.split(':');
        before = before.slice(0, parseInt(parts[0].charAt(0), 36)) + parts[0].slice(1);
        words.push(before);
        named.push(parts[1]);
        told.push(parts[2] || '');
    });
    this.words = words;
    this.named = named;
    this.told = told;
}

SearchIndex.prototype.from = function (prefix) {
    let low = 0;
    let high = this.words.length;
    while (low < high) {
        const middle = (low + high) >> 1;
        if (this.words[middle] < prefix) {
            low = middle + 1;
        } else {
            high = middle;
        }
    }
    return low;
};

function eachPage(differences, take) {
    let page = -1;
    if (differences !== '') {
        differences.split(',').forEach(function (step) {
            page += parseInt(step, 36);
            take(page);
        });
    }
}

// Points of every page that one word matches: a name before the text, a whole word before its beginning.
SearchIndex.prototype.points = function (word) {
    const points = {};
    function raise(page, to) {
        points[page] = Math.max(points[page] || 0, to);
    }
    for (let at = this.from(word); at < this.words.length && this.words[at].lastIndexOf(word, 0) === 0; at++) {
        const whole = this.words[at] === word ? 1 : 0;
        eachPage(this.named[at], function (page) { raise(page, 20 + 4 * whole); });
        eachPage(this.told[at], function (page) { raise(page, 2 + 2 * whole); });
    }
    return points;
};

// Numbers of the pages that match all words, or else any of them, best first.
SearchIndex.prototype.find = function (text, most) {
    const words = tokens(text);
    const lists = words.map(this.points, this);
    const sums = {};
    lists.forEach(function (points) {
        Object.keys(points).forEach(function (page) {
            sums[page] = sums[page] || { page: Number(page), hits: 0, points: 0 };
            sums[page].hits++;
            sums[page].points += points[page];
        });
    });
    let found = Object.keys(sums).map(function (page) { return sums[page]; });
    const whole = found.filter(function (one) { return one.hits === words.length; });
    found = whole.length > 0 ? whole : found;
    found.sort(function (a, b) { return b.hits - a.hits || b.points - a.points || a.page - b.page; });
    return found.slice(0, most).map(function (one) { return one.page; });
};
