package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.Book;
import org.fieldfold.manuscript.HandbookWriter;
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
        Page gone = BOOK.pages().stream().filter(page -> page.kind() == Page.Kind.PEST)
                .reduce((one, later) -> later).orElseThrow();
        Map<String, String> without = written(with(BOOK, page -> page == gone ? Optional.empty()
                : Optional.of(page)));
        assertTrue(without.size() > 2 && without.size() < first.size() / 2, "pages: " + without.keySet());
        without.forEach((id, text) -> assertNotEquals(first.get(id), text, "it was written for a reason: " + id));
        assertTrue(first.entrySet().stream().filter(page -> !page.getKey().equals(gone.id()))
                .filter(page -> page.getValue().contains("href=\"#" + gone.id() + "\"")
                        || page.getValue().contains("href=\"#" + gone.id() + "--"))
                .allMatch(page -> without.containsKey(page.getKey())), "all that led there");
    }

    private static Book with(Book book, Function<Page, Optional<Page>> change) {
        return new Book(book.title(), book.language(), book.publisher(), book.year(), book.edition(),
                book.proof(), book.foot(), book.pages().stream().flatMap(page -> change.apply(page).stream())
                .collect(Collectors.toList()));
    }

    /** The pages of a book that had to be written, and that what was taken is what would be written. */
    private Map<String, String> written(Book book) {
        Kept kept = kept();
        Addresses addresses = new Addresses(book);
        OneFile form = new OneFile(addresses, new Drawings(Shipped.BASE));
        OneFile clean = new OneFile(addresses, new Drawings(Shipped.BASE));
        KeptPages pages = new KeptPages(kept, book, form, addresses, Shipped.PHRASES, List.of());
        KeptPages anew = new KeptPages(Kept.nothing(), book, clean, addresses, Shipped.PHRASES, List.of());
        Map<String, String> written = new TreeMap<>();
        for (Page page : book.pages()) {
            String text = pages.written("test", page, asked -> {
                Markup out = new Markup();
                pages.markup(asked).write(out, page);
                written.put(page.id(), out.toString());
                return out.toString();
            });
            assertEquals(anew.markup(page), text, page.id());
        }
        assertEquals(clean.style(Kept.nothing()), form.style(Kept.nothing()), "drawings and columns");
        kept.tidy();
        return written;
    }
}
