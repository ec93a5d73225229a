package org.fieldfold.handbook;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
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

    Epub(Book book, String title, Phrases phrases, Addresses addresses, Drawings drawings) {
        this.book = book;
        this.title = title;
        this.phrases = phrases;
        this.addresses = addresses;
        this.drawings = drawings;
        this.form = Folder.ofEpub(addresses, drawings);
    }

    /**
     * The file.
     *
     * @param issued stands in it as the day on which it was made
     * @param validUntil last day on which it holds
     */
    byte[] bytes(LocalDate issued, LocalDate validUntil) {
        List<EpubPackage.Item> items = new ArrayList<>();
        List<HandbookFile> files = new ArrayList<>();
        PageMarkup pages = new PageMarkup(book, form, addresses, phrases, List.of());
        EpubContents contents = new EpubContents(book, form, phrases);
        for (Page page : contents.inOrder()) {
            Markup body = new Markup();
            pages.write(body, page);
            String markup = body.toString();
            items.add(EpubPackage.Item.page("p-" + addresses.of(page), form.file(page),
                    markup.contains("<svg") ? "svg" : ""));
            files.add(file(form.file(page), document(page.name(), markup)));
        }
        for (Drawing drawing : drawings.shown()) {
            String path = Folder.FIGURES + drawing.file();
            items.add(EpubPackage.Item.picture("f-" + drawing.name(), path));
            files.add(new HandbookFile(INSIDE + path, drawing.figure().bytes()));
        }
        files.add(file(SHEET, Sheet.read(SHEET) + Sheet.read("epub.css")));
        files.add(file("contents.xhtml", document(phrases.say("book.contents"), contents.markup())));
        files.add(file("book.opf", new EpubPackage(book, title, phrases).written(items, issued, validUntil)));
        return EpubZip.of(INSIDE + "book.opf", files);
    }

    private static HandbookFile file(String path, String text) {
        return new HandbookFile(INSIDE + path, text.getBytes(StandardCharsets.UTF_8));
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
