// What the script says stands in the phrases; what it keeps stays on this telephone.
function say(key) {
    let text = facts.words[key] || key;
    for (let i = 1; i < arguments.length; i++) {
        text = text.split('{' + (i - 1) + '}').join(String(arguments[i]));
    }
    return text;
}

function recall(name, otherwise) {
    try {
        const kept = localStorage.getItem(facts.prefix + name);
        return kept === null ? otherwise : JSON.parse(kept);
    } catch (unable) {
        return otherwise;
    }
}

// Whether it could be kept: a browser may refuse, or be full.
function keep(name, value) {
    try {
        localStorage.setItem(facts.prefix + name, JSON.stringify(value));
        return true;
    } catch (unable) {
        return false;
    }
}

function forget(name) {
    try {
        localStorage.removeItem(facts.prefix + name);
    } catch (unable) {
        // nothing was kept, then
    }
}

// An element; text among the children stays text.
function make(tag, attributes) {
    const element = document.createElement(tag);
    Object.keys(attributes || {}).forEach(function (name) {
        if (name.slice(0, 2) === 'on') {
            element.addEventListener(name.slice(2), attributes[name]);
        } else {
            element.setAttribute(name, attributes[name]);
        }
    });
    for (let i = 2; i < arguments.length; i++) {
        const child = arguments[i];
        element.appendChild(typeof child === 'object' ? child : document.createTextNode(String(child)));
    }
    return element;
}

function empty(element) {
    while (element.firstChild) {
        element.removeChild(element.firstChild);
    }
    return element;
}

function all(selector, within) {
    return Array.prototype.slice.call((within || document).querySelectorAll(selector));
}

function button(words, press, attributes) {
    return make('button', Object.assign({ type: 'button', onclick: press }, attributes || {}), words);
}

function dayAfter(days) {
    const day = new Date();
    day.setDate(day.getDate() + days);
    return day;
}

function isoDay(day) {
    return day.getFullYear() + '-' + ('0' + (day.getMonth() + 1)).slice(-2) + '-' + ('0' + day.getDate()).slice(-2);
}

function dayInWords(day) {
    return keptDay(isoDay(day));
}

// A day as it is kept, 2027-05-01, as people write it.
function keptDay(iso) {
    return say('date', Number(iso.slice(8)), facts.months[Number(iso.slice(5, 7)) - 1], iso.slice(0, 4));
}
