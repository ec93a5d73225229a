package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.Book;
import org.fieldfold.manuscript.HandbookWriter;
import org.fieldfold.manuscript.Leaf;
import org.fieldfold.manuscript.News;
import org.fieldfold.manuscript.Page;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages that are taken from an earlier build are those that would be written now. */
class KeptPagesTest {
    private static final Book BOOK = new HandbookWriter(Shipped.BASE, Shipped.PHRASES).write(false);

    @TempDir
    private Path folder;

    private Kept kept() {
        return Kept.in(folder.resolve("kept"), "p").naming(Map.of(), Set.of(Page.class));
    }

    @Test
    void everyPageHasAKeyAndAllFormsAreTheSameWithAndWithoutWhatIsKept() {
        Kept kept = kept();
        BOOK.pages().forEach(page -> assertTrue(kept.key(page).isPresent(), page.id()));
        List<HandbookFile> clean = Handbook.write(Shipped.BASE, Shipped.PHRASES, false);
        for (int round = 0; round < 3; round++) {
            Kept now = kept();
            List<HandbookFile> files = Handbook.write(Shipped.BASE, Shipped.PHRASES, News.NONE, false, now);
            now.tidy();
            assertEquals(clean.stream().map(HandbookFile::path).toList(),
                    files.stream().map(HandbookFile::path).toList());
            for (int i = 0; i < files.size(); i++) {
                assertArrayEquals(clean.get(i).bytes(), files.get(i).bytes(), files.get(i).path());
            }
        }
    }

    /** Each page of a book is written once, until something that it asked for is answered otherwise. */
    @Test
    void aPageIsWrittenAgainWhenWhatItLeadsToHasMoved() {
        Map<String, String> first = written(BOOK);
        assertEquals(BOOK.pages().size(), first.size());
        assertEquals(Set.of(), written(BOOK).keySet(), "nothing has changed");
        Leaf gone = BOOK.leaves().stream().filter(leaf -> leaf.kind() == Page.Kind.PEST)
                .reduce((one, later) -> later).orElseThrow();
        Map<String, String> without = written(with(BOOK, leaf -> leaf != gone));
        assertTrue(without.size() > 2 && without.size() < first.size() / 2, "pages: " + without.keySet());
        without.forEach((id, text) -> assertNotEquals(first.get(id), text, "it was written for a reason: " + id));
        assertTrue(first.entrySet().stream().filter(page -> !page.getKey().equals(gone.id()))
                .filter(page -> page.getValue().contains("href=\"#" + gone.id() + "\"")
                        || page.getValue().contains("href=\"#" + gone.id() + "--"))
                .allMatch(page -> without.containsKey(page.getKey())), "all that led there");
    }

    private static Book with(Book book, Predicate<Leaf> stays) {
        return new Book(book.title(), book.language(), book.publisher(), book.year(), book.edition(),
                book.proof(), book.foot(), book.leaves().stream().filter(stays).toList(), book.files());
    }

    /** The pages of a book that had to be written, and that what was taken is what would be written. */
    private Map<String, String> written(Book book) {
        Kept kept = kept();
        Drawings drawings = new Drawings(Shipped.BASE);
        Binding binding = new Binding(book, Shipped.PHRASES, List.of(), drawings, kept);
        Binding clean = new Binding(book, Shipped.PHRASES, List.of(), drawings, Kept.nothing());
        OneFile form = new OneFile(binding.addresses(), binding.drawings());
        OneFile cleanForm = new OneFile(clean.addresses(), clean.drawings());
        KeptPages pages = new KeptPages(binding, form);
        KeptPages anew = new KeptPages(clean, cleanForm);
        Map<String, String> written = new TreeMap<>();
        for (Leaf leaf : book.leaves()) {
            String text = new String(pages.made("test", leaf, KeptPages.Written.class, asked -> {
                written.put(leaf.id(), pages.markup(leaf, asked));
                return KeptPages.Written.of(written.get(leaf.id()));
            }).text(), StandardCharsets.UTF_8);
            assertEquals(anew.markup(leaf, cleanForm), text, leaf.id());
        }
        assertEquals(cleanForm.columns(), form.columns());
        assertEquals(cleanForm.shown(), form.shown());
        kept.tidy();
        return written;
    }
}
