package org.fieldfold.handbook;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.Book;
import org.fieldfold.manuscript.Page;
import org.fieldfold.manuscript.Phrases;

/**
 * The handbook as a book for the readers that telephones bring along: EPUB 3.3. The pages are those of the folder,
 * without what only a browser can do.
 */
final class Epub {
    private static final String INSIDE = "book/";
    private static final String SHEET = "handbook.css";

    private final Book book;
    private final String title;
    private final Phrases phrases;
    private final Addresses addresses;
    private final Drawings drawings;
    private final Folder form;
    private final KeptPages pages;
    private final Kept kept;

    Epub(Book book, String title, Phrases phrases, Addresses addresses, Drawings drawings, Folder form,
            KeptPages pages, Kept kept) {
        this.book = book;
        this.title = title;
        this.phrases = phrases;
        this.addresses = addresses;
        this.drawings = drawings;
        this.form = form;
        this.pages = pages;
        this.kept = kept;
    }

    /** A page as it lies in the book. */
    private record Packed(List<AskedForm.Asked> asked, boolean drawn,
            EpubZip.Packed file) implements KeptPages.Made {
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
        EpubContents contents = new EpubContents(book, form, phrases);
        for (Page page : contents.inOrder()) {
            Packed packed = pages.made("epub", page, Packed.class, asked -> packed(page, asked));
            items.add(EpubPackage.Item.page("p-" + addresses.of(page), form.file(page),
                    packed.drawn() ? "svg" : ""));
            files.add(new EpubZip.Item(INSIDE + form.file(page), packed.file()));
        }
        for (Drawing drawing : drawings.shown()) {
            String path = Folder.FIGURES + drawing.file();
            items.add(EpubPackage.Item.picture("f-" + drawing.name(), path));
            files.add(new EpubZip.Item(INSIDE + path, kept.value(drawing.key(kept, "epub"),
                    EpubZip.Packed.class, () -> EpubZip.packed(drawing.figure().bytes()))));
        }
        files.add(file(SHEET, Sheet.read(SHEET) + Sheet.read("epub.css")));
        files.add(file("contents.xhtml", document(phrases.say("book.contents"), contents.markup())));
        files.add(file("book.opf", new EpubPackage(book, title, phrases).written(items, issued, validUntil)));
        return EpubZip.of(INSIDE + "book.opf", files);
    }

    private Packed packed(Page page, AskedForm asked) {
        Markup body = new Markup();
        pages.markup(asked).write(body, page);
        String markup = body.toString();
        return new Packed(asked.asked(), markup.contains("<svg"),
                EpubZip.packed(utf8(document(page.name(), markup))));
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
