// The search works before the pages are read to their end; all else waits for them.
const host = document.getElementById('tools');
const enterSearch = host ? addFinder(host) : function () {};

function whenRead(begin) {
    if (document.readyState === 'loading') {
        document.addEventListener('DOMContentLoaded', begin);
    } else {
        begin();
    }
}

whenRead(function () {
    document.documentElement.classList.add('scripted');
    all('.bar').forEach(function (bar) {
        bar.appendChild(button(say('bar.find'), enterSearch, { 'class': 'to-find' }));
    });
    addAge();
    addCounters();
    addKey();
    addNotes();
    addOffice();
    addFeedback();
    addMemory();
    addKeeper();
    addUnits();
    addReckoners();
    addSeason();
    addDates();
});
