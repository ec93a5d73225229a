package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.handbook.Handbook;
import org.fieldfold.handbook.HandbookFile;
import org.fieldfold.handbook.HandbookFiles;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.News;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.report.Checksums;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Which files of the handbook are made again after an edit: those that differ from what they were, and hardly any
 * others; and all are those that would be made of everything.
 */
class KeptHandbookTest {
    /** Made at every build, as they say of all others what they are. */
    private static final Set<String> ALWAYS = Set.of("icon.svg", "handbook.webmanifest", "worker.js");

    @TempDir
    private Path folder;
    private Path content;
    private final Map<String, Shelf> shelves = new TreeMap<>();

    @BeforeEach
    void lay() throws IOException {
        content = folder.resolve("content");
        SmallBase.lay(content);
    }

    /** A folder that holds what was made for it, and takes a file again only where that is made of something else. */
    private static final class Shelf implements HandbookFiles {
        private final Map<String, byte[]> files = new TreeMap<>();
        private final Map<String, Optional<String>> hashes = new TreeMap<>();
        private final Set<String> put = new TreeSet<>();
        private final Set<String> made = new TreeSet<>();
        private final Set<String> changed = new TreeSet<>();

        @Override
        public Standing put(String path, Optional<String> madeOf, Supplier<byte[]> make) {
            assertTrue(put.add(path), "put twice: " + path);
            if (madeOf.isEmpty() || !madeOf.equals(hashes.get(path))) {
                byte[] bytes = make.get();
                made.add(path);
                if (!Arrays.equals(bytes, files.put(path, bytes))) {
                    changed.add(path);
                }
            }
            hashes.put(path, madeOf);
            byte[] bytes = files.get(path);
            return new Standing(bytes.length, Checksums.of(bytes));
        }
    }

    /** Writes the handbook in both languages and says which files were made, those aside that always are. */
    private Set<String> made() throws IOException {
        LoadedBase loaded = BaseLoader.load(content);
        ContentBase base = loaded.base().orElseThrow();
        Tongues tongues = new Tongues(base);
        Kept kept = Kept.in(folder.resolve("kept"), "this program").naming(PrintRoom.hashes(base), PrintRoom.SHARED);
        EarlierPages earlier = EarlierPages.of(content, kept, loaded.inputs());
        Set<String> made = new TreeSet<>();
        for (String language : tongues.languages()) {
            Shelf shelf = shelves.computeIfAbsent(language, first -> new Shelf());
            shelf.put.clear();
            shelf.made.clear();
            shelf.changed.clear();
            Phrases phrases = Phrases.in(language);
            Handbook.write(tongues.in(language), phrases, earlier.book(tongues, phrases, News.NONE, false), kept,
                    shelf);
            shelf.files.keySet().retainAll(shelf.put);
            holds(Handbook.write(tongues.in(language), phrases, false), shelf);
            made.addAll(shelf.made);
        }
        kept.tidy();
        made.removeIf(path -> ALWAYS.contains(path.substring(path.lastIndexOf('/') + 1)));
        return made;
    }

    private static void holds(List<HandbookFile> clean, Shelf shelf) {
        assertEquals(clean.stream().map(HandbookFile::path).collect(Collectors.toCollection(TreeSet::new)), shelf.put);
        clean.forEach(file -> assertArrayEquals(file.bytes(), shelf.files.get(file.path()), file.path()));
    }

    private Set<String> changed() {
        Set<String> changed = new HashSet<>();
        shelves.values().forEach(shelf -> changed.addAll(shelf.changed));
        changed.removeIf(path -> ALWAYS.contains(path.substring(path.lastIndexOf('/') + 1)));
        return changed;
    }

    private void edit(String file, String from, String to) throws IOException {
        String text = Files.readString(content.resolve(file));
        assertTrue(text.contains(from), from);
        Files.writeString(content.resolve(file), text.replace(from, to));
    }

    private static Set<String> pages(Set<String> files) {
        return files.stream().filter(path -> path.endsWith(".html") && path.startsWith("handbook/"))
                .filter(path -> !path.endsWith("/index.html")).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void whatStaysIsNotMadeAgain() throws IOException {
        assertTrue(made().size() > 50);
        assertEquals(Set.of(), made(), "nothing has changed");
        edit("pests/leek-moth.yaml", "Small brown moth; one", "A small brown moth; one");
        assertEquals(Set.of(), made(), "what only guides show");
        edit("pests/leek-moth.yaml", "names:", "# a line more\n\nnames:");
        assertEquals(Set.of(), made(), "places");
        edit("pests/leek-moth.yaml", "A slim, yellow-green worm", "A thin, yellow-green worm");
        assertEquals(Set.of("handbook/en/leek-moth.html", "handbook/es/leek-moth.html"), pages(made()));
        assertTrue(changed().containsAll(Set.of("handbook.en.html", "handbook.en.epub", "handbook/en/handbook.js")));
        edit("pests/leek-moth.yaml", "A thin, yellow-green worm", "A slim, yellow-green worm");
        made();
        edit("es/pests/leek-moth.yaml", "text: ", "text: Más ");
        assertTrue(made().stream().allMatch(path -> path.matches("handbook[./]es.*")), "the other language stays");
        edit("offices/tarnfield.yaml", "555-0122", "555-0123");
        assertEquals(Set.of("handbook/en/offices.html", "handbook/es/offices.html"), pages(made()));
    }

    /** A page is made again when what it leads to is called otherwise, goes, or comes back. */
    @Test
    void whatLeadsToAPageGoesWithIt() throws IOException {
        made();
        edit("pests/onion-maggot.yaml", "common: onion maggot", "common: zebra maggot");
        Set<String> made = made();
        assertTrue(pages(changed()).size() > 3, "its crop, what does the same damage: " + pages(changed()));
        assertTrue(made.containsAll(changed()));
        Path gone = content.resolve("chapters").resolve("how-to-scout.md");
        if (!Files.exists(gone)) {
            Files.createDirectories(gone.getParent());
            Files.copy(Path.of("content/chapters/how-to-scout.md"), gone);
            assertTrue(made().contains("handbook/en/read-how-to-scout.html"));
        }
        Files.delete(gone);
        made();
        assertTrue(changed().contains("handbook/en/reading.html"), "the list that led there: " + changed());
        assertTrue(!shelves.get("en").put.contains("handbook/en/read-how-to-scout.html"));
    }

    /** A drawing of other proportions is told to all pages that show it. */
    @Test
    void aDrawingIsTakenByItsBytes() throws IOException {
        made();
        Path drawing = content.resolve("figures/leek-moth-adult.svg");
        String text = Files.readString(drawing);
        Files.writeString(drawing, text.replaceFirst("<(path|circle|ellipse) ", "<$1 id=\"one\" "));
        made();
        assertTrue(changed().stream().allMatch(path -> !path.endsWith(".html") || path.matches("handbook[.].*")
                || path.endsWith("/index.html")), "no page of the folder: " + changed());
        assertTrue(changed().contains("handbook/en/figures/leek-moth-adult.svg"));
        Files.writeString(drawing, text.replaceFirst("viewBox=\"0 0 (\\d+) (\\d+)\"", "viewBox=\"0 0 $1 99\""));
        made();
        assertTrue(changed().contains("handbook/en/leek-moth.html"), "" + changed());
    }
}
