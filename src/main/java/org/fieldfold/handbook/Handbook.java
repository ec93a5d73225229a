package org.fieldfold.handbook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.fieldfold.calendar.Calendars;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.Alphabet;
import org.fieldfold.manuscript.Book;
import org.fieldfold.manuscript.CalendarDownloads;
import org.fieldfold.manuscript.HandbookWriter;
import org.fieldfold.manuscript.News;
import org.fieldfold.manuscript.Page;
import org.fieldfold.manuscript.Phrases;

/** The handbook in its three forms, from one manuscript. */
public final class Handbook {
    private static final String SHEET = "handbook.css";
    private static final String SCRIPT = "handbook.js";

    private final Book book;
    private final Phrases phrases;
    private final List<Phrases> others;
    private final Addresses addresses;
    private final Frame frame;
    private final Kept kept;

    /** @param languages in which the edition is written, this one included */
    private Handbook(Book book, Phrases phrases, List<String> languages, Kept kept) {
        this.book = book;
        this.kept = kept;
        this.phrases = phrases;
        this.others = languages.stream().filter(language -> !language.equals(book.language()))
                .filter(Phrases::speaks).map(Phrases::in).toList();
        this.addresses = new Addresses(book);
        this.frame = new Frame(book.language());
    }

    /**
     * Writes {@code handbook.<language>.html}, the whole in one file, {@code handbook/<language>/}, a page an
     * entry, and {@code handbook.<language>.epub} for readers of books. The same content gives the same
     * bytes.
     *
     * @param proof whether findings of severity error stand: then every page says so
     */
    public static List<HandbookFile> write(ContentBase base, Phrases phrases, boolean proof) {
        return write(base, phrases, News.NONE, proof);
    }

    /** The same, with what is new since the last edition. */
    public static List<HandbookFile> write(ContentBase base, Phrases phrases, News news, boolean proof) {
        return write(base, phrases, news, proof, Kept.nothing());
    }

    /** The same; what an earlier build made of the same pages and drawings is taken from there. */
    public static List<HandbookFile> write(ContentBase content, Phrases phrases, News news, boolean proof,
            Kept kept) {
        List<HandbookFile> files = new ArrayList<>();
        write(content, phrases, news, proof, kept, new Calendars(content), files::add);
        return List.copyOf(files);
    }

    /**
     * The same, file by file.
     *
     * @param dates that were worked out for this base, whatever their order in it
     * @param to takes each as soon as it is written, so that they need not all be held at once
     */
    public static void write(ContentBase content, Phrases phrases, News news, boolean proof, Kept kept,
            Calendars dates, Consumer<HandbookFile> to) {
        ContentBase base = Alphabet.of(phrases.language()).order(content);
        Calendars calendars = dates.of(base);
        Handbook handbook = new Handbook(new HandbookWriter(base, phrases, news, calendars).write(proof), phrases,
                base.edition().value().languages(), kept);
        List<Download> forms = List.of(handbook.handed(handbook.oneFile(base, new Drawings(base)), to),
                handbook.handed(handbook.epub(new Drawings(base), base.edition().value()), to));
        Offline offline = new Offline(handbook.book);
        Consumer<HandbookFile> visited = file -> {
            offline.add(file);
            to.accept(file);
        };
        handbook.folder(base, new Drawings(base), forms, visited);
        CalendarDownloads.files(base, phrases, calendars).forEach((name, text) -> visited.accept(text("handbook/"
                + phrases.language() + "/" + name, text)));
        offline.files().forEach(to);
    }

    /** A form that the first page of the folder offers. */
    private record Download(String path, int size) {
    }

    private Download handed(HandbookFile file, Consumer<HandbookFile> to) {
        to.accept(file);
        return new Download(file.path(), file.bytes().length);
    }

    private HandbookFile oneFile(ContentBase base, Drawings drawings) {
        OneFile form = new OneFile(addresses, drawings);
        KeptPages pages = pages(form, others);
        WholeBook whole = new WholeBook();
        book.pages().forEach(page -> whole.add(pages.markup(page)));
        Markup body = new Markup();
        body.open("main").line();
        body.element("div", "", "id", "everything").line();
        WholeBook.place(body);
        body.open("p", "class", "all").element("a", phrases.say("book.everything"), "href", "#everything")
                .close();
        body.close().line();
        pages.markup(form).bar(body, Page.Kind.START);
        String code = Frame.code(script(base, form, pages));
        String style = Sheet.read(SHEET) + Sheet.read("tools.css") + Sheet.read("screens.css")
                + form.style(kept);
        return new HandbookFile(file(book.language()),
                whole.in(frame.inline(title(), style, code, WholeBook.scriptPlace(), body.toString()), code));
    }

    private KeptPages pages(Form form, List<Phrases> languages) {
        return new KeptPages(kept, book, form, addresses, phrases, languages);
    }

    /** @param forms the other forms, which the first page offers */
    private void folder(ContentBase base, Drawings drawings, List<Download> forms, Consumer<HandbookFile> to) {
        String at = "handbook/" + book.language() + "/";
        Folder form = Folder.ofPages(addresses, drawings);
        KeptPages pages = pages(form, others);
        for (Page page : book.pages()) {
            String offered = page.kind() == Page.Kind.START ? downloads(forms) : "";
            to.accept(text(at + form.file(page), pages.written("file", page, asked ->
                    file(page, pages.markup(asked), offered), offered)));
        }
        to.accept(text(at + SHEET, Sheet.read(SHEET) + Sheet.read("tools.css")));
        to.accept(text(at + SCRIPT, script(base, form, pages)));
        for (Drawing drawing : drawings.shown()) {
            to.accept(new HandbookFile(at + Folder.FIGURES + drawing.file(), drawing.figure().bytes()));
        }
    }

    private String file(Page page, PageMarkup markup, String offered) {
        Markup body = new Markup();
        body.open("main").line();
        markup.write(body, page);
        body.written(offered).close().line();
        markup.bar(body, page.kind());
        return frame.linked(page.kind() == Page.Kind.START ? title() : page.name() + " · " + title(), SHEET,
                SCRIPT, body.toString());
    }

    /** The other forms, with their size before anybody spends a signal on them. */
    private String downloads(List<Download> forms) {
        Markup body = new Markup();
        body.open("div", "class", "page").open("ul", "class", "downloads");
        for (Download form : forms) {
            String kind = form.path().substring(form.path().lastIndexOf('.') + 1);
            body.open("li").element("a", phrases.say("book.download." + kind), "href", "../../" + form.path(),
                    "download", form.path()).text(" " + phrases.say("book.download.size",
                    BigDecimal.valueOf(form.size(), 6).setScale(1, RoundingMode.UP), book.edition()))
                    .close();
        }
        return body.close().close().line().toString();
    }

    private static HandbookFile text(String path, String text) {
        return new HandbookFile(path, text.getBytes(StandardCharsets.UTF_8));
    }

    private String script(ContentBase base, Form form, KeptPages pages) {
        return Script.of(new ScriptFacts(base, phrases).of(new SearchPages(base, phrases, book, form, pages),
                new KeyFacts(base, phrases, form), form instanceof OneFile));
    }

    private HandbookFile epub(Drawings drawings, Edition edition) {
        Folder form = Folder.ofEpub(addresses, drawings);
        return new HandbookFile("handbook." + book.language() + ".epub",
                new Epub(book, title(), phrases, addresses, drawings, form, pages(form, List.of()), kept)
                        .bytes(edition.issued(), edition.validUntil()));
    }

    /** The whole handbook of a language in one file. */
    static String file(String language) {
        return "handbook." + language + ".html";
    }

    private String title() {
        return book.title() + " · " + book.year();
    }
}
