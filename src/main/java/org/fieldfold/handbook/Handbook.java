package org.fieldfold.handbook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.Alphabet;
import org.fieldfold.manuscript.Book;
import org.fieldfold.manuscript.HandbookWriter;
import org.fieldfold.manuscript.News;
import org.fieldfold.manuscript.Phrases;

/** The handbook in its three forms, from one manuscript. */
public final class Handbook {
    /** The language in which pages for reviewers stand. */
    private static final String REVIEWERS = "en";

    private final ContentBase base;
    private final Book book;
    private final Phrases phrases;
    private final Binding binding;
    private final BookScript script;
    private final HandbookFiles to;

    private Handbook(ContentBase base, Phrases phrases, Book book, Kept kept, HandbookFiles to) {
        this.base = base;
        this.book = book;
        this.phrases = phrases;
        this.to = to;
        this.binding = new Binding(book, phrases, base.edition().value().languages(), new Drawings(base), kept);
        this.script = new BookScript(base, binding);
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
        ContentBase base = Alphabet.of(phrases.language()).order(content);
        List<HandbookFile> files = new ArrayList<>();
        write(base, phrases, new HandbookWriter(base, phrases, news, new Calendars(base)).write(proof), kept,
                (path, madeOf, make) -> {
                    HandbookFile file = new HandbookFile(path, make.get());
                    files.add(file);
                    return HandbookFiles.Standing.of(file.bytes());
                });
        return List.copyOf(files);
    }

    /**
     * The same, file by file.
     *
     * @param book as it is written of the content, its entries in the order of their names
     * @param to takes each file as soon as it is written
     */
    public static void write(ContentBase content, Phrases phrases, Book book, Kept kept, HandbookFiles to) {
        new Handbook(Alphabet.of(phrases.language()).order(content), phrases, book, kept, to).write();
        // pages for reviewers are written later in the same build, and then know it
        new Frame(REVIEWERS, kept);
    }

    private void write() {
        List<Download> forms = List.of(oneFile(), epub());
        Offline offline = new Offline(book);
        String at = "handbook/" + book.language() + "/";
        HandbookFiles visited = (path, madeOf, make) -> {
            HandbookFiles.Standing standing = to.put(at + path, madeOf, make);
            offline.add(at + path, standing);
            return standing;
        };
        new BookFolder(binding, title(), script, visited).write(downloads(forms));
        book.files().forEach(file -> visited.put(file.name(), file.hash(), () -> file.text().get()
                .getBytes(StandardCharsets.UTF_8)));
        offline.files().forEach(file -> to.put(file.path(), Optional.empty(), file::bytes));
    }

    /** A form that the first page of the folder offers. */
    private record Download(String path, int size) {
    }

    private Download oneFile() {
        String path = file(book.language());
        WholeFile form = new WholeFile(binding, title(), script);
        Optional<String> madeOf = form.madeOf();
        HandbookFiles.Standing standing = to.put(path, madeOf, form::bytes);
        form.use();
        return new Download(path, standing.size());
    }

    private Download epub() {
        String path = "handbook." + book.language() + ".epub";
        Edition edition = base.edition().value();
        Epub form = new Epub(binding, title());
        Optional<String> madeOf = binding.whole().flatMap(whole -> binding.hash("epub", whole,
                binding.drawings().bytes(), edition.issued(), edition.validUntil()));
        HandbookFiles.Standing standing = to.put(path, madeOf,
                () -> form.bytes(edition.issued(), edition.validUntil()));
        form.use();
        return new Download(path, standing.size());
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

    /** The whole handbook of a language in one file. */
    static String file(String language) {
        return "handbook." + language + ".html";
    }

    private String title() {
        return book.title() + " · " + book.year();
    }
}
