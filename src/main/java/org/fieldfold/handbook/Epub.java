package org.fieldfold.handbook;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.fieldfold.manuscript.Book;
import org.fieldfold.manuscript.Leaf;

/**
 * The handbook as a book for the readers that telephones bring along: EPUB 3.3. The pages are those of the folder,
 * without what only a browser can do.
 */
final class Epub {
    private static final String INSIDE = "book/";
    private static final String PAGE = "epub";
    private static final String SHEET = "handbook.css";

    private final Binding binding;
    private final Book book;
    private final String title;
    private final Folder form;
    private final KeptPages pages;
    private final Drawings drawings;

    Epub(Binding binding, String title) {
        this.binding = binding;
        this.book = binding.book();
        this.title = title;
        this.drawings = binding.drawings();
        this.form = Folder.ofEpub(binding.addresses(), drawings);
        this.pages = new KeptPages(binding, form);
    }

    /** A page as it lies in the book. */
    private record Packed(Told told, boolean drawn, EpubZip.Packed file) implements Told.Made<Packed> {
        @Override
        public Packed told(Told other) {
            return new Packed(other, drawn, file);
        }
    }

    /** Says that what it is made of is in use. */
    void use() {
        book.leaves().forEach(leaf -> pages.use(PAGE, leaf));
    }

    /**
     * The file.
     *
     * @param issued stands in it as the day on which it was made
     * @param validUntil last day on which it holds
     */
    byte[] bytes(LocalDate issued, LocalDate validUntil) {
        List<EpubPackage.Item> items = new ArrayList<>();
        List<EpubZip.Item> files = new ArrayList<>();
        EpubContents contents = new EpubContents(book, form, binding.phrases());
        for (Leaf leaf : contents.inOrder()) {
            Packed packed = pages.made(PAGE, leaf, Packed.class, asked -> packed(leaf, asked));
            items.add(EpubPackage.Item.page("p-" + form.anchor(leaf), form.file(leaf), packed.drawn() ? "svg" : ""));
            files.add(new EpubZip.Item(INSIDE + form.file(leaf), packed.file()));
        }
        for (Drawing drawing : drawings.shown()) {
            String path = Folder.FIGURES + drawing.file();
            items.add(EpubPackage.Item.picture("f-" + drawing.name(), path));
            files.add(new EpubZip.Item(INSIDE + path, drawings.packed(drawing, binding.kept())));
        }
        files.add(file(SHEET, Sheet.read(SHEET) + Sheet.read("epub.css")));
        files.add(file("contents.xhtml", document(binding.phrases().say("book.contents"), contents.markup())));
        files.add(file("book.opf", new EpubPackage(book, title, binding.phrases()).written(items, issued, validUntil)));
        return EpubZip.of(INSIDE + "book.opf", files);
    }

    private Packed packed(Leaf leaf, Form asked) {
        String markup = pages.markup(leaf, asked);
        return new Packed(Told.NOTHING, markup.contains("<svg"), EpubZip.packed(utf8(document(leaf.name(), markup))));
    }

    private static EpubZip.Item file(String path, String text) {
        return new EpubZip.Item(INSIDE + path, EpubZip.packed(utf8(text)));
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private String document(String name, String body) {
        Markup head = new Markup();
        head.element("title", name).empty("link", "rel", "stylesheet", "href", SHEET);
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!DOCTYPE html>\n"
                + "<html xmlns=\"http://www.w3.org/1999/xhtml\" xmlns:epub=\"http://www.idpf.org/2007/ops\" lang=\""
                + book.language() + "\" xml:lang=\"" + book.language() + "\">\n<head>" + head
                + "</head>\n<body>\n" + body.replace("<svg ", "<svg xmlns=\"http://www.w3.org/2000/svg\" ")
                + "</body>\n</html>\n";
    }
}
