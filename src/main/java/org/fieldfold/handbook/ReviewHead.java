package org.fieldfold.handbook;

import org.fieldfold.entry.Edition;

/** The head of a page for the specialist, with the ways between these pages. */
final class ReviewHead {
    private ReviewHead() {
    }

    /** Opens {@code main} and {@code article}; the page closes both. */
    static void open(Markup out, Edition edition, String title, String beneath, boolean proof) {
        out.open("main").line().open("article", "class", "page k-review").line();
        out.open("div", "class", "head").element("a", "Review", "class", "up", "href", "index.html")
                .open("span", "class", "edition");
        if (proof) {
            out.element("strong", "PROOF", "class", "proof").text(" ");
        }
        out.text("Edition " + edition.year() + " · until " + edition.validUntil()).close().close().line();
        out.element("h1", title, "class", "title").element("p", beneath, "class", "beneath").line();
        edition.notice().ifPresent(notice -> out.element("p", notice.full().words(), "class", "notice")
                .line());
    }
}
