'use strict';
const at = id => document.getElementById(id);
const choice = at('entry');
let shown = '';
let bookHash = '';
let stream = null;
let asked = 0;

function remembered() {
  const named = decodeURIComponent(location.hash.slice(1));
  try {
    return named || localStorage.getItem('fieldfold.preview.entry') || '';
  } catch (refused) {
    return named;
  }
}

function remember(id) {
  history.replaceState(null, '', '#' + encodeURIComponent(id));
  try {
    localStorage.setItem('fieldfold.preview.entry', id);
  } catch (refused) {
    // the address alone remembers it
  }
}

function element(name, className, text) {
  const made = document.createElement(name);
  made.className = className;
  made.textContent = text;
  return made;
}

function list(listed, id) {
  const before = choice.dataset.listed;
  const now = JSON.stringify(listed);
  if (before !== now) {
    choice.dataset.listed = now;
    choice.replaceChildren();
    for (const kind of new Set(listed.map(one => one.kind))) {
      const group = document.createElement('optgroup');
      group.label = kind;
      for (const one of listed.filter(other => other.kind === kind)) {
        group.append(new Option(one.name, one.id));
      }
      choice.append(group);
    }
  }
  choice.value = id;
}

function panels(view) {
  const place = at('panels');
  place.replaceChildren();
  for (const guide of view.panels) {
    place.append(element('h3', '', guide.guide + ', ' + guide.paper));
    for (const drawing of guide.drawings) {
      const read = new DOMParser().parseFromString(drawing, 'image/svg+xml');
      place.append(document.importNode(read.documentElement, true));
    }
  }
  if (view.panels.length === 0) {
    place.append(element('p', '', 'No pocket guide holds this entry.'));
  }
}

function book(view) {
  if (view.bookHash === bookHash) {
    return;
  }
  const frame = at('page');
  const same = frame.dataset.book === view.book;
  const top = same && frame.contentWindow ? frame.contentWindow.scrollY : 0;
  bookHash = view.bookHash;
  frame.dataset.book = view.book;
  frame.onload = () => frame.contentWindow.scrollTo(0, top);
  frame.contentWindow.location.replace(view.book || 'about:blank');
}

function finding(said) {
  const item = element('li', said.severity, '');
  item.append(element('div', 'at', said.place), element('div', '', said.severity + ': ' + said.message));
  if (said.source) {
    item.append(element('div', 'source', said.source));
  }
  if (said.hint) {
    item.append(element('div', 'hint', said.hint));
  }
  const why = document.createElement('details');
  why.append(element('summary', '', said.rule));
  if (said.asks) {
    why.append(element('p', '', said.asks));
  }
  why.addEventListener('toggle', () => explain(why, said.rule), {once: true});
  item.append(why);
  return item;
}

async function explain(why, rule) {
  const answer = await fetch('/rules/' + rule);
  if (answer.ok) {
    why.append(element('pre', '', (await answer.text()).replace(/^# .*\n+/, '')));
  }
}

function findings(view) {
  const place = at('said');
  place.replaceChildren();
  const part = (head, summary, all) => {
    place.append(element('h3', '', head), element('p', '', summary));
    if (all.length) {
      const items = document.createElement('ul');
      items.append(...all.map(finding));
      place.append(items);
    }
  };
  part('In this entry’s files', view.summaryHere, view.findings);
  part('Elsewhere', 'Of the whole base: ' + view.summary, view.others);
}

async function show(id) {
  const turn = ++asked;
  const answer = await fetch('/entry/' + encodeURIComponent(id) + '.json');
  if (turn !== asked) {
    return;
  }
  if (answer.status === 404) {
    const any = await (await fetch('/entry/.json')).json();
    list(any.listed, '');
    findings(any);
    if (any.listed.length && !any.listed.some(one => one.id === id)) {
      choose(any.listed[0].id);
    }
    return;
  }
  const view = await answer.json();
  if (turn !== asked) {
    return;
  }
  list(view.listed, id);
  panels(view);
  book(view);
  findings(view);
  at('notes').hidden = view.notes.length === 0;
  at('notes').textContent = view.notes.join(' ');
  document.title = choice.selectedOptions[0]?.textContent + ' · Preview';
  at('state').textContent = view.summaryHere + ' here';
  at('state').className = '';
}

function listen(id) {
  if (stream) {
    stream.close();
  }
  stream = new EventSource('/events/' + encodeURIComponent(id));
  stream.onopen = () => show(shown);
  stream.onmessage = () => show(shown);
  stream.onerror = () => {
    at('state').textContent = 'not following: the preview has ended, or is starting again';
    at('state').className = 'lost';
  };
}

function choose(id) {
  shown = id;
  remember(id);
  listen(id);
}

function step(by) {
  const next = choice.selectedIndex + by;
  if (next >= 0 && next < choice.options.length) {
    choose(choice.options[next].value);
  }
}

choice.addEventListener('change', () => choose(choice.value));
document.addEventListener('keydown', event => {
  if (event.ctrlKey || event.metaKey || event.altKey || event.target === choice) {
    return;
  }
  const keys = {j: () => step(1), k: () => step(-1), '/': () => choice.focus()};
  if (keys[event.key]) {
    event.preventDefault();
    keys[event.key]();
  }
});
const first = remembered();
if (first) {
  choose(first);
} else {
  show('-');
}
