package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.News;
import org.fieldfold.trace.KeptResults;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Of the sheets of two guides of the demo base only those are found out about again for which something was read
 * that has changed.
 */
class KeptSheetsTest {
    private static final List<String> GUIDES = List.of("apple.yaml", "potato.yaml");

    @TempDir
    private Path folder;
    private Path content;
    private Set<String> made = Set.of();

    @BeforeEach
    void lay() throws IOException {
        content = FolderCopy.of(Path.of("content"), folder.resolve("content"));
        try (Stream<Path> guides = Files.list(content.resolve("guides"))) {
            for (Path guide : guides.filter(one -> !GUIDES.contains(one.getFileName().toString())).toList()) {
                Files.delete(guide);
            }
        }
        look();
    }

    /** What is known of each sheet, by its path; leaves in {@link #made} what was not known before. */
    private Map<String, SheetFacts> look() throws IOException {
        return look(Kept.in(folder.resolve("kept"), "the same program"));
    }

    private Map<String, SheetFacts> look(Kept earlier) throws IOException {
        LoadedBase loaded = BaseLoader.load(content);
        ContentBase base = loaded.base().orElseThrow();
        Kept kept = earlier.naming(PrintRoom.hashes(base), PrintRoom.SHARED);
        KeptSheets known = new KeptSheets(content, loaded.inputs(), kept);
        SetGuides guides = SetGuides.of(new Tongues(base), News.NONE, false, PrintRoom.of(base, kept), known);
        kept.save();
        made = new TreeSet<>(known.made());
        Map<String, SheetFacts> facts = new TreeMap<>();
        guides.facts().forEach(sheet -> facts.put(sheet.path(), sheet));
        return facts;
    }

    private void replace(String file, String was, String is) throws IOException {
        String text = Files.readString(content.resolve(file));
        assertTrue(text.contains(was), file + " has '" + was + "'");
        Files.writeString(content.resolve(file), text.replace(was, is));
    }

    /** Other bytes that say the same. */
    private void touch(String file) throws IOException {
        Files.writeString(content.resolve(file), "# another line\n", StandardOpenOption.APPEND);
    }

    /** Looks again, and whether what is known is what there is to know. */
    private Map<String, SheetFacts> again() throws IOException {
        Map<String, SheetFacts> known = look();
        Set<String> asked = made;
        assertEquals(look(Kept.in(Files.createTempDirectory(folder, "nothing"), "the same program")).toString(),
                known.toString());
        made = asked;
        return known;
    }

    @Test
    void aPestConcernsTheGuidesThatHoldIt() throws IOException {
        touch("pests/apple-maggot.yaml");
        again();
        assertEquals(Set.of("en guides/apple", "en forms/apple", "en offices/hazel-ridge/apple",
                "en offices/lowbridge/apple", "en offices/northmoor/apple", "en offices/saltmere/apple",
                "en offices/saltmere/forms/apple", "en offices/tarnfield/apple", "en guides/apple in METRIC",
                "en guides/apple in CUSTOMARY", "es guides/apple", "es forms/apple", "es offices/hazel-ridge/apple",
                "es offices/tarnfield/apple"), made);
        again();
        assertEquals(Set.of(), made);
    }

    @Test
    void anOfficesTelephoneConcernsItsOwnSheets() throws IOException {
        Map<String, SheetFacts> before = look();
        replace("offices/saltmere.yaml", "555-01", "555-02");
        Map<String, SheetFacts> after = again();
        assertTrue(made.stream().allMatch(batch -> batch.startsWith("en offices/saltmere/")), made.toString());
        assertTrue(made.contains("en offices/saltmere/print-me-first"), made.toString());
        after.forEach((path, sheet) -> assertEquals(path.startsWith("offices/saltmere/"),
                !sheet.order().equals(before.get(path).order()), path));
    }

    /** Another station is another calendar for the whole region. */
    @Test
    void anOfficesStationConcernsAll() throws IOException {
        replace("offices/saltmere.yaml", "station: ", "station: no-");
        again();
        assertTrue(made.containsAll(List.of("en guides/apple", "es guides/apple", "en forms/apple")), made.toString());
    }

    @Test
    void aTranslationConcernsItsLanguage() throws IOException {
        touch("es/pests/apple-maggot.yaml");
        again();
        assertEquals(Set.of("es guides/apple", "es forms/apple", "es offices/hazel-ridge/apple",
                "es offices/tarnfield/apple"), made);
    }

    @Test
    void aDrawingConcernsWhoShowsIt() throws IOException {
        Map<String, SheetFacts> before = look();
        String drawing = "figures/apple-maggot-adult.svg";
        Files.writeString(content.resolve(drawing), Files.readString(content.resolve(drawing)) + "\n");
        Map<String, SheetFacts> after = again();
        assertNotEquals(before.get("foldouts/apple.en.letter.pdf").order(),
                after.get("foldouts/apple.en.letter.pdf").order());
        assertEquals(before.get("foldouts/potato.en.letter.pdf").order(),
                after.get("foldouts/potato.en.letter.pdf").order());
    }

    @Test
    void whatIsDamagedIsFoundOutAgain() throws IOException {
        Map<String, SheetFacts> before = look();
        assertEquals(Set.of(), made);
        try (Stream<Path> files = Files.list(folder.resolve("kept"))) {
            for (Path file : files.toList()) {
                byte[] bytes = Files.readAllBytes(file);
                bytes[bytes.length / 2] ^= 1;
                Files.write(file, bytes);
            }
        }
        assertEquals(before.toString(), look().toString());
        assertTrue(made.containsAll(List.of("en guides/apple", "es guides/apple")), made.toString());
    }

    @Test
    void bytesOfAnotherFormAreNothing() throws IOException {
        SheetForm form = new SheetForm(Map.of());
        KeptResults<List<SheetFacts>> results = new KeptResults<>();
        results.goOn("nothing of the kind".getBytes(StandardCharsets.UTF_8), form);
        LoadedBase loaded = BaseLoader.load(content);
        Batch batch = new Batch("one", "", List.of(), read -> List.of());
        assertEquals(List.of(), batch.take(results.round(loaded.base().orElseThrow(), Map.of()),
                loaded.base().orElseThrow()));
    }
}
