package org.fieldfold.handbook;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.fieldfold.manuscript.Book;
import org.fieldfold.manuscript.Phrases;

/** The package document of an EPUB (EPUB 3.3, 5): what the book is, and what files it has in which order. */
final class EpubPackage {
    private final Book book;
    private final String title;
    private final Phrases phrases;

    EpubPackage(Book book, String title, Phrases phrases) {
        this.book = book;
        this.title = title;
        this.phrases = phrases;
    }

    /**
     * One file of the book.
     *
     * @param properties EPUB's own, as {@code svg} for a page with drawings inside its text; may be empty
     * @param read whether it is a page that is read in its turn
     */
    record Item(String id, String path, String type, String properties, boolean read) {
        static Item page(String id, String path, String properties) {
            return new Item(id, path, "application/xhtml+xml", properties, true);
        }

        static Item picture(String id, String path) {
            String type = path.endsWith(".svg") ? "image/svg+xml" : path.endsWith(".png") ? "image/png"
                    : "image/jpeg";
            return new Item(id, path, type, "", false);
        }
    }

    String written(List<Item> items, LocalDate issued, LocalDate validUntil) {
        Markup out = new Markup();
        out.open("package", "xmlns", "http://www.idpf.org/2007/opf", "version", "3.0", "unique-identifier", "id",
                "xml:lang", book.language()).line();
        metadata(out, issued, validUntil);
        out.open("manifest").line();
        item(out, new Item("contents", "contents.xhtml", "application/xhtml+xml", "nav", false));
        item(out, new Item("sheet", "handbook.css", "text/css", "", false));
        items.forEach(one -> item(out, one));
        out.close().line();
        out.open("spine").line();
        boolean first = true;
        for (Item one : items) {
            if (one.read()) {
                out.empty("itemref", "idref", one.id()).line();
                if (first) {
                    out.empty("itemref", "idref", "contents").line();
                    first = false;
                }
            }
        }
        out.close().close().line();
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + out;
    }

    private void metadata(Markup out, LocalDate issued, LocalDate validUntil) {
        out.open("metadata", "xmlns:dc", "http://purl.org/dc/elements/1.1/").line();
        out.element("dc:identifier", identifier(), "id", "id").line();
        out.element("dc:title", title).line();
        out.element("dc:language", book.language()).line();
        if (!book.publisher().isBlank()) {
            out.element("dc:publisher", book.publisher()).line();
        }
        out.element("dc:date", issued.toString()).line();
        out.element("dc:description", book.edition()).line();
        meta(out, "dcterms:modified", issued + "T00:00:00Z");
        meta(out, "dcterms:valid", "end=" + validUntil);
        meta(out, "schema:accessMode", "textual");
        meta(out, "schema:accessMode", "visual");
        meta(out, "schema:accessModeSufficient", "textual");
        for (String feature : List.of("alternativeText", "structuralNavigation", "tableOfContents",
                "readingOrder", "displayTransformability")) {
            meta(out, "schema:accessibilityFeature", feature);
        }
        meta(out, "schema:accessibilityHazard", "none");
        meta(out, "schema:accessibilitySummary", phrases.say("book.accessible"));
        out.close().line();
    }

    private static void meta(Markup out, String property, String value) {
        out.element("meta", value, "property", property).line();
    }

    private static void item(Markup out, Item item) {
        if (item.properties().isEmpty()) {
            out.empty("item", "id", item.id(), "href", item.path(), "media-type", item.type()).line();
        } else {
            out.empty("item", "id", item.id(), "href", item.path(), "media-type", item.type(), "properties",
                    item.properties()).line();
        }
    }

    /** The same for every build of an edition in a language, and for no other. */
    private String identifier() {
        String name = String.join("\n", book.publisher(), book.title(), String.valueOf(book.year()),
                book.language());
        return "urn:uuid:" + UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }
}
