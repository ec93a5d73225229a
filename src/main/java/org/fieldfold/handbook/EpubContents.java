package org.fieldfold.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fieldfold.manuscript.Book;
import org.fieldfold.manuscript.Leaf;
import org.fieldfold.manuscript.Phrases;

/** The contents of the book as EPUB's navigation document: each page beneath the one that it belongs to. */
final class EpubContents {
    private final Book book;
    private final Folder form;
    private final Phrases phrases;
    private final Map<String, List<Leaf>> byUp;

    EpubContents(Book book, Folder form, Phrases phrases) {
        this.book = book;
        this.form = form;
        this.phrases = phrases;
        this.byUp = book.leaves().stream().collect(Collectors.groupingBy(Leaf::up));
    }

    /** All pages in the order of the contents, which is also the order in which a book is leafed through. */
    List<Leaf> inOrder() {
        List<Leaf> order = new ArrayList<>();
        order.add(book.leaves().get(0));
        beneath(book.leaves().get(0)).forEach(page -> add(order, page));
        return order;
    }

    private void add(List<Leaf> order, Leaf page) {
        order.add(page);
        beneath(page).forEach(one -> add(order, one));
    }

    String markup() {
        Markup out = new Markup();
        out.open("nav", "epub:type", "toc", "role", "doc-toc", "id", "toc");
        out.element("h1", phrases.say("book.contents")).line();
        out.open("ol").line();
        Leaf start = book.leaves().get(0);
        item(out, start, List.of());
        beneath(start).forEach(page -> item(out, page, beneath(page)));
        out.close().close().line();
        return out.toString();
    }

    private void item(Markup out, Leaf page, List<Leaf> beneath) {
        out.open("li").element("a", Phrases.capital(page.name()), "href", form.file(page));
        if (!beneath.isEmpty()) {
            out.open("ol").line();
            beneath.forEach(one -> item(out, one, beneath(one)));
            out.close();
        }
        out.close().line();
    }

    private List<Leaf> beneath(Leaf page) {
        return byUp.getOrDefault(page.id(), List.of()).stream().filter(one -> one != page).toList();
    }
}
