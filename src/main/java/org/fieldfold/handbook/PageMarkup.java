package org.fieldfold.handbook;

import java.util.List;
import java.util.Locale;
import org.fieldfold.manuscript.Book;
import org.fieldfold.manuscript.Leaf;
import org.fieldfold.manuscript.Page;
import org.fieldfold.manuscript.Phrases;

/** Writes a page: its head with the year, its parts, its foot. */
final class PageMarkup {
    private final Book book;
    private final Form form;
    private final Addresses addresses;
    private final Phrases phrases;
    private final List<Phrases> others;

    /** @param others the phrases of the other languages in which there is a handbook */
    PageMarkup(Book book, Form form, Addresses addresses, Phrases phrases, List<Phrases> others) {
        this.book = book;
        this.form = form;
        this.addresses = addresses;
        this.phrases = phrases;
        this.others = others;
    }

    void write(Markup out, Leaf page) {
        out.open("article", "class", "page k-" + page.kind().name().toLowerCase(Locale.ROOT),
                "id", form.anchor(page)).line();
        head(out, page);
        BlockMarkup blocks = new BlockMarkup(form, out, form.titleLevel(page), phrases);
        for (Page.Part part : page.page().parts()) {
            if (part.name().isEmpty()) {
                out.open("div", "class", "top").line();
                blocks.write(part.blocks());
                out.close();
                jump(out, page);
            } else {
                out.open("section", "class", "part p-" + part.key(), "id", form.anchor(page, part.key()));
                out.element("h" + (form.titleLevel(page) + 1), part.name()).line();
                blocks.write(part.blocks());
                out.close();
            }
            out.line();
        }
        out.open("p", "class", "foot");
        blocks.runs(book.foot());
        out.text(" " + book.edition() + ".").close().close().line();
    }

    /** Where one is, and how old it is. */
    private void head(Markup out, Leaf page) {
        out.open("div", "class", "head");
        addresses.page(page.up()).ifPresentOrElse(up -> out.open("a", "class", "up", "href",
                form.href("#" + up.id()).orElseThrow()).text("‹ " + (up.kind() == Page.Kind.START
                        ? phrases.say("book.first-page") : up.name())).close(),
                () -> out.element("span", phrases.say("book.handbook"), "class", "up"));
        for (Phrases other : others) {
            out.element("a", other.say("book.language"), "class", "tongue", "href",
                    form.inLanguage(other.language(), page), "hreflang", other.language(), "lang",
                    other.language());
        }
        out.open("span", "class", "edition");
        book.proof().ifPresent(proof -> out.element("strong", proof, "class", "proof").text(" "));
        out.text(book.edition()).close().close().line();
    }

    /** The way down a long page. */
    private void jump(Markup out, Leaf page) {
        List<Page.Part> parts = page.page().parts().stream().filter(part -> !part.name().isEmpty()).toList();
        if (parts.size() < 3) {
            return;
        }
        out.line().open("nav", "class", "jump", "aria-label", phrases.say("book.on-page"));
        for (Page.Part part : parts) {
            out.element("a", part.name(), "href", form.href("#" + page.id() + "/" + part.key())
                    .orElse("#" + form.anchor(page, part.key())));
        }
        out.close();
    }

    /** The places at the thumb. */
    void bar(Markup out, Page.Kind here) {
        out.open("nav", "class", "bar", "aria-label", phrases.say("book.places"));
        place(out, here, Page.Kind.LOOK, "at:look", "look");
        place(out, here, Page.Kind.COUNT, "at:count", "count");
        place(out, here, Page.Kind.WEEKS, "at:weeks", "weeks");
        place(out, here, Page.Kind.OFFICE, "at:offices", "office");
        out.close().line();
    }

    private void place(Markup out, Page.Kind here, Page.Kind kind, String id, String key) {
        form.href("#" + id).ifPresent(href -> {
            if (here == kind) {
                out.element("a", phrases.say("book.bar." + key), "class", "to-" + key, "href", href,
                        "aria-current", "true");
            } else {
                out.element("a", phrases.say("book.bar." + key), "class", "to-" + key, "href", href);
            }
        });
    }
}
