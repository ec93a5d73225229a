// Words as they are searched: without accents, in small letters. The compiler folds the same way.
const SPELT = { '\u00df': 'ss', '\u00e6': 'ae', '\u0153': 'oe', '\u00f8': 'o', '\u0142': 'l', '\u0111': 'd' };

function folded(text) {
    return text.normalize('NFD').replace(/[\u0300-\u036f]/g, '').toLowerCase()
        .replace(/[\u00df\u00e6\u0153\u00f8\u0142\u0111]/g, function (sign) { return SPELT[sign]; });
}

function tokens(text) {
    return folded(text).split(/[^a-z0-9\u00e0-\u024f\u0370-\u1fff\u3040-\u9fff]+/)
        .filter(function (word) { return word !== ''; });
}
