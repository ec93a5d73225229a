// Find it by what you see: crop, part of the plant, what is seen there; each tap leaves fewer entries.
function ornament(drawing) {
    return drawing.indexOf('/') > 0 ? make('img', { 'class': 'frame', src: drawing, alt: '' })
        : make('span', { 'class': 'frame ' + drawing });
}

function capital(words) {
    return words.charAt(0).toUpperCase() + words.slice(1);
}

function distinct(list) {
    return list.filter(function (one, i) { return list.indexOf(one) === i; });
}

// chosen: crop, part (or 'animal'), sign (or stage), as far as it has been chosen
function matching(entries, chosen) {
    return entries.filter(function (entry) {
        if (chosen.length > 0 && entry.crops.indexOf(chosen[0]) < 0) {
            return false;
        }
        if (chosen.length > 1 && chosen[1] === 'animal') {
            return chosen.length < 3 ? entry.stages.length > 0 : entry.stages.indexOf(chosen[2]) >= 0;
        }
        return chosen.length < 2 || entry.seen.some(function (one) {
            return one[0] === chosen[1] && (chosen.length < 3 || one[1] === chosen[2]);
        });
    });
}

function addKey() {
    const page = document.querySelector('.k-look#look');
    if (!page) {
        return;
    }
    const chosen = [];
    const box = make('section', { 'class': 'key', 'aria-label': say('key') });
    const top = page.querySelector('.top');
    top.insertBefore(box, top.querySelector('.tiles'));
    top.querySelector('.beneath').hidden = true;

    function choose(value) {
        chosen.push(value);
        show(true);
    }

    function tile(words, drawing, beneath, value) {
        const inside = make('button', { type: 'button', 'class': 'tile', onclick: function () { choose(value); } });
        if (drawing) {
            inside.appendChild(ornament(drawing));
        }
        inside.appendChild(make('b', {}, words));
        if (beneath) {
            inside.appendChild(make('small', {}, beneath));
        }
        return make('li', {}, inside);
    }

    function many(count) {
        return count === 1 ? say('key.entry') : say('key.entries', count);
    }

    // In the order of the pages that list them, which is the same for every crop.
    function inOrder(kind, some) {
        return Object.keys(facts.names[kind]).filter(function (one) { return some.indexOf(one) >= 0; });
    }

    function options() {
        const left = matching(facts.seen, chosen);
        if (chosen.length === 0) {
            // in the order of the page of crops, and with its drawings
            const grown = [].concat.apply([], left.map(function (entry) { return entry.crops; }));
            return distinct(Object.keys(facts.names.pic).concat(grown)).filter(function (crop) {
                return grown.indexOf(crop) >= 0;
            }).map(function (crop) {
                const of = matching(facts.seen, [crop]);
                return tile(facts.names.crop[crop], facts.names.pic[crop] || of[0].pic, many(of.length), crop);
            });
        }
        if (chosen.length === 1) {
            const hurt = [].concat.apply([], left.map(function (entry) {
                return entry.seen.map(function (one) { return one[0]; });
            }));
            return inOrder('part', hurt).map(function (part) {
                const of = matching(left, [chosen[0], part]);
                return tile(facts.names.part[part], of[0].damage || of[0].pic, many(of.length), part);
            }).concat([tile(say('key.animal'), left[0].pic, '', 'animal')]);
        }
        const signs = [].concat.apply([], left.map(function (entry) {
            return chosen[1] === 'animal' ? entry.stages : entry.seen.filter(function (one) { return one[0] === chosen[1]; })
                .map(function (one) { return one[1]; });
        }));
        return inOrder(chosen[1] === 'animal' ? 'stage' : 'sign', signs).map(function (sign) {
            const of = matching(left, [chosen[0], chosen[1], sign]);
            return tile(chosen[1] === 'animal' ? facts.names.stage[sign] : facts.names.sign[sign],
                chosen[1] === 'animal' ? of[0].pic : of[0].damage || of[0].pic, many(of.length), sign);
        });
    }

    function links(words, list) {
        const line = make('p', {}, make('b', {}, words), ' ');
        list.forEach(function (one, i) {
            line.appendChild(document.createTextNode(i === 0 ? '' : ' · '));
            line.appendChild(make('a', { href: one[1] }, one[0]));
        });
        return line;
    }

    function answer(entry) {
        const words = entry.seen.filter(function (one) { return one[0] === chosen[1] && one[1] === chosen[2]; })
            .map(function (one) { return one[2]; }).join(' ');
        const found = make('div', { 'class': 'answer-entry' },
            make('a', { 'class': 'tile', href: entry.href }, ornament(words === '' ? entry.pic : entry.damage || entry.pic),
                make('b', {}, entry.name), make('small', {}, words)));
        if (entry.not.length > 0) {
            found.appendChild(links(say('key.not'), entry.not));
        }
        if (entry.friends.length > 0) {
            found.appendChild(links(say('key.friends'), entry.friends));
        }
        return found;
    }

    function show(moved) {
        empty(box);
        const path = make('p', { 'class': 'path' });
        chosen.forEach(function (value, i) {
            const word = i === 0 ? facts.names.crop[value] : i === 1 ? value === 'animal' ? say('key.animal') : facts.names.part[value]
                : chosen[1] === 'animal' ? facts.names.stage[value] : facts.names.sign[value];
            path.appendChild(button('‹ ' + capital(word), function () {
                chosen.splice(i);
                show(true);
            }, { 'aria-label': say('key.back', word) }));
        });
        const question = make('h2', { tabindex: '-1' }, say('key.' + ['crop', 'part', chosen[1] === 'animal' ? 'stage' : 'sign',
            'found'][chosen.length]));
        if (chosen.length > 0) {
            box.appendChild(path);
        }
        box.appendChild(question);
        if (chosen.length === 3) {
            matching(facts.seen, chosen).forEach(function (entry) { box.appendChild(answer(entry)); });
            box.appendChild(make('p', { 'class': 'small' }, say('key.unsure')));
        } else {
            const list = make('ul', { 'class': 'tiles' });
            options().forEach(function (option) { list.appendChild(option); });
            box.appendChild(list);
        }
        if (moved) {
            question.focus();
        }
    }

    show(false);
    top.insertBefore(make('h2', {}, say('key.else')), box.nextSibling);
}
