package org.fieldfold.handbook;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.manuscript.Alphabet;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.Book;
import org.fieldfold.manuscript.HandbookWriter;
import org.fieldfold.manuscript.News;
import org.fieldfold.manuscript.Leaf;
import org.fieldfold.manuscript.Page;
import org.fieldfold.manuscript.Phrases;

/**
 * The folder handbook of one language, a file at a time: each is made when it is asked for, and only then. A page
 * reads as that of {@link Handbook#write}; it leads to no other language and to no other form.
 */
public final class SinglePages {
    private static final String SHEET = "handbook.css";
    private static final String SCRIPT = "handbook.js";

    private final ContentBase base;
    private final Book book;
    private final Binding binding;
    private final Drawings drawings;
    private final Folder form;

    public SinglePages(ContentBase content, Phrases phrases, News news) {
        this(content, phrases, new HandbookWriter(Alphabet.of(phrases.language()).order(content), phrases, news)
                .write(false));
    }

    /** @param book as it is written of the content, its entries in the order of their names */
    public SinglePages(ContentBase content, Phrases phrases, Book book) {
        this.base = Alphabet.of(phrases.language()).order(content);
        this.book = book;
        this.drawings = new Drawings(base);
        this.binding = new Binding(book, phrases, List.of(), drawings, Kept.nothing());
        this.form = Folder.ofPages(binding.addresses(), drawings);
    }

    /** The name of an entry's file; empty when the book has no page of it. */
    public Optional<String> file(String entry) {
        return binding.addresses().page(entry).map(form::file);
    }

    /** The names of all files that can be asked for. */
    public Set<String> files() {
        Set<String> files = new TreeSet<>(Set.of(SHEET, SCRIPT));
        book.leaves().forEach(page -> files.add(form.file(page)));
        base.figures().keySet().forEach(id -> drawings.find(id)
                .ifPresent(drawing -> files.add(Folder.FIGURES + drawing.file())));
        return files;
    }

    /** The file of a name; empty when there is none. */
    public Optional<byte[]> read(String file) {
        if (file.equals(SHEET)) {
            return Optional.of(utf8(Sheet.read(SHEET) + Sheet.read("tools.css")));
        }
        if (file.equals(SCRIPT)) {
            return Optional.of(utf8(new BookScript(base, binding).text(form)));
        }
        return page(file).map(this::write).or(() -> figure(file));
    }

    private Optional<Leaf> page(String file) {
        return book.leaves().stream().filter(page -> form.file(page).equals(file)).findFirst();
    }

    private byte[] write(Leaf page) {
        PageMarkup markup = binding.markup(form);
        Markup body = new Markup();
        body.open("main").line();
        markup.write(body, page);
        body.close().line();
        markup.bar(body, page.kind());
        String whole = book.title() + " · " + book.year();
        return utf8(binding.frame().linked(page.kind() == Page.Kind.START ? whole : page.name() + " · " + whole, SHEET,
                SCRIPT, body.toString()));
    }

    private Optional<byte[]> figure(String file) {
        return base.figures().keySet().stream().flatMap(id -> drawings.find(id).stream())
                .filter(drawing -> (Folder.FIGURES + drawing.file()).equals(file)).findFirst()
                .map(drawing -> drawing.figure().bytes());
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
