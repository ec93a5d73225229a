package org.fieldfold.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fieldfold.FolderCopy;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.content.InputFile;
import org.fieldfold.content.KeptReadings;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.entry.ContentBase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is asked again after one file of the demo base was saved. */
class KeptFindingsTest {
    private static final Path DEMO = Path.of("content");

    @TempDir
    private Path content;
    private final KeptReadings readings = new KeptReadings();
    private final KeptFindings kept = new KeptFindings();
    private LocalDate asOf = LocalDate.of(2027, 1, 15);

    @BeforeEach
    void lay() throws IOException {
        FolderCopy.of(DEMO, content);
    }

    /** Checks the base as it is; by rule how often each was put. */
    private SortedMap<String, Integer> asked() throws IOException {
        LoadedBase loaded = readings.load(content);
        ContentBase base = loaded.base().orElseThrow();
        assertEquals(Rulebook.check(base, asOf).toString(), kept.check(base, asOf, loaded.inputs().stream()
                .collect(Collectors.toMap(InputFile::path, InputFile::sha256))).toString());
        return kept.asked();
    }

    private void edit(String file, String was, String is) throws IOException {
        String text = Files.readString(content.resolve(file));
        assertTrue(text.contains(was), file);
        Files.writeString(content.resolve(file), text.replace(was, is));
    }

    private static Set<String> ids(Class<? extends Rule> kind) {
        return Rulebook.rules().stream().filter(kind::isInstance).map(Rule::id)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void atFirstEverythingIsAskedAndThenNothing() throws IOException {
        SortedMap<String, Integer> all = asked();
        assertEquals(Rulebook.rules().size(), all.size());
        long pests;
        try (Stream<Path> files = Files.list(content.resolve("pests"))) {
            pests = files.count();
        }
        ids(PestRule.class).forEach(rule -> assertEquals((int) pests, all.get(rule), rule));
        assertEquals(Map.of(), asked());
    }

    @Test
    void aTextOfOnePestIsPutToRulesThatReadThisPest() throws IOException {
        asked();
        edit("pests/onion-thrips.yaml", "Slim splinter", "Thin splinter");
        SortedMap<String, Integer> asked = asked();
        asked.forEach((rule, times) -> assertEquals(1, times, rule));
        Set<String> together = new TreeSet<>(asked.keySet());
        for (Class<? extends Rule> kind : List.of(PestRule.class, TextRule.class, TranslationRule.class)) {
            assertTrue(together.containsAll(ids(kind)), kind.getSimpleName());
            together.removeAll(ids(kind));
        }
        // these look at all pests together, or look this one up; the other questions to the whole base rest
        assertEquals("crop-unused description-missing entry-in-no-guide guide-unfit interval-table-broken "
                + "look-alike-one-way material-incomplete net-too-coarse no-caution reviser-missing revision-date "
                + "scientific-name-form sizes-contradict source-missing source-unused",
                String.join(" ", together));
    }

    @Test
    void aTranslationIsPutToTheRulesOfTranslations() throws IOException {
        asked();
        edit("es/pests/onion-thrips.yaml", "of: 76277cf6", "of: 00000000");
        SortedMap<String, Integer> expected = new TreeMap<>();
        ids(TranslationRule.class).forEach(rule -> expected.put(rule, 1));
        assertEquals(expected, asked());
    }

    @Test
    void anOtherDayOfReferenceAsksEverythingAgain() throws IOException {
        SortedMap<String, Integer> all = asked();
        asOf = asOf.plusYears(2);
        assertEquals(all, asked());
    }

    @Test
    void linesThatMovedMoveTheirFindings() throws IOException {
        edit("pests/onion-thrips.yaml", "Slim splinter", "Killitol® splinter");
        asked();
        Path file = content.resolve("pests/onion-thrips.yaml");
        Files.writeString(file, "# one\n# two\n" + Files.readString(file));
        asked();
        Files.writeString(file, Files.readString(file).replace("# one\n# two\n", ""));
        asked();
    }

    /** What was written down is taken by a later process, but for another day, or when it is not whole. */
    @Test
    void anotherProcessGoesOn() throws IOException {
        edit("pests/onion-thrips.yaml", "Slim splinter", "Killitol® splinter");
        SortedMap<String, Integer> all = asked();
        byte[] bytes = kept.bytes().orElseThrow();
        edit("pests/onion-maggot.yaml", "common: onion maggot", "common: onion fly maggot");
        LoadedBase loaded = BaseLoader.load(content);
        assertTrue(asked(new KeptFindings(bytes), loaded, asOf) < 100);
        int anew = all.values().stream().mapToInt(Integer::intValue).sum();
        assertEquals(anew, asked(new KeptFindings(bytes), loaded, asOf.plusDays(1)));
        for (int length : new int[] {0, 1, 30, bytes.length / 2, bytes.length - 1}) {
            KeptFindings cut = new KeptFindings(Arrays.copyOf(bytes, length));
            assertEquals(anew, asked(cut, loaded, asOf), "cut at " + length);
        }
    }

    private static int asked(KeptFindings findings, LoadedBase loaded, LocalDate asOf) {
        ContentBase base = loaded.base().orElseThrow();
        assertEquals(Rulebook.check(base, asOf), findings.check(base, asOf, loaded.inputs().stream()
                .collect(Collectors.toMap(InputFile::path, InputFile::sha256))));
        return findings.asked().values().stream().mapToInt(Integer::intValue).sum();
    }
}
