package org.fieldfold.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.content.InputFile;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Keys;
import org.fieldfold.manuscript.Alphabet;
import org.fieldfold.translation.TranslatedBase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is made of a base is made again when, and only when, something that was read for it has changed. */
class KeptResultsTest {
    private static final Path DEMO = Path.of("content");

    @TempDir
    private Path folder;
    private Path content;
    private final KeptResults<String> kept = new KeptResults<>();
    private final List<String> made = new ArrayList<>();
    private Optional<Alphabet> alphabet = Optional.empty();

    @BeforeEach
    void lay() throws IOException {
        content = folder.resolve("content");
        for (String file : List.of("edition.yaml", "crops.yaml", "pests/leek-moth.yaml",
                "pests/onion-maggot.yaml", "figures/leek-moth-adult.svg", "figures/leek-moth-adult.yaml",
                "es/pests/leek-moth.yaml", "es/pests/onion-maggot.yaml", "es/glossary.yaml")) {
            save(file, Files.readString(DEMO.resolve(file)));
        }
    }

    private void save(String file, String text) throws IOException {
        Files.createDirectories(content.resolve(file).getParent());
        Files.writeString(content.resolve(file), text);
    }

    private void edit(String file) throws IOException {
        save(file, "# edited\n" + Files.readString(content.resolve(file)));
    }

    /** Makes one result a reading, as a base is now; the names of those that were made stand in {@link #made}. */
    private void round(Map<String, Function<ContentBase, Object>> readings) throws IOException {
        made.clear();
        LoadedBase loaded = BaseLoader.load(content);
        ContentBase base = alphabet.map(by -> by.order(loaded.base().get())).orElseGet(loaded.base()::get);
        KeptResults<String>.Round round = kept.round(base, loaded.inputs().stream()
                .collect(Collectors.toMap(InputFile::path, InputFile::sha256)));
        readings.forEach((name, reading) -> assertEquals(String.valueOf(reading.apply(base)),
                round.take(name, "", read -> {
                    made.add(name);
                    return String.valueOf(reading.apply(read));
                }), name));
        round.end();
    }

    private Set<String> remade(Map<String, Function<ContentBase, Object>> readings) throws IOException {
        round(readings);
        return Set.copyOf(made);
    }

    private static final Map<String, Function<ContentBase, Object>> READINGS = Map.ofEntries(
            Map.entry("nothing", base -> ""),
            Map.entry("one pest", base -> base.pests().get("leek-moth").value()),
            Map.entry("whether a pest is there", base -> base.pests().containsKey("leek-moth")),
            Map.entry("a pest that is not there", base -> base.pests().get("onion-thrips")),
            Map.entry("which pests there are", base -> List.copyOf(base.pests().keySet())),
            Map.entry("how many pests", base -> base.pests().size()),
            Map.entry("all pests", base -> List.copyOf(base.pests().values())),
            Map.entry("pests from l", base -> List.copyOf(base.pests().tailMap("l").keySet())),
            Map.entry("reviewed", base -> base.reviewed().size()),
            Map.entry("a crop", base -> base.crops().get("onion")),
            Map.entry("a figure", base -> base.figures().get("leek-moth-adult").value().file()),
            Map.entry("drawings of a pest", base -> base.figuresOf("leek-moth", List.of(), List.of()).size()),
            Map.entry("a translated file", base -> base.translations().get("es").files()
                    .get("pests/leek-moth").passages().size()),
            Map.entry("a glossary", base -> base.translations().get("es").glossary().size()),
            Map.entry("all translations", base -> base.translations().values().stream()
                    .mapToInt(one -> one.files().values().size()).sum()),
            Map.entry("a fold scheme", base -> base.scheme("roll-9").isPresent()),
            Map.entry("unread files", base -> base.unread().keySet().toString()));

    @Test
    void nothingIsMadeAgainWhileNothingChanges() throws IOException {
        assertEquals(READINGS.keySet(), remade(READINGS));
        assertEquals(Set.of(), remade(READINGS));
    }

    @Test
    void aChangedPestConcernsThoseWhoReadIt() throws IOException {
        round(READINGS);
        edit("pests/leek-moth.yaml");
        assertEquals(Set.of("one pest", "whether a pest is there", "all pests", "pests from l", "reviewed"),
                remade(READINGS));
        edit("pests/onion-maggot.yaml");
        assertEquals(Set.of("all pests", "pests from l", "reviewed"), remade(READINGS));
    }

    @Test
    void aPestThatComesConcernsThoseWhoMissedIt() throws IOException {
        round(READINGS);
        save("pests/onion-thrips.yaml", Files.readString(DEMO.resolve("pests/onion-thrips.yaml")));
        Set<String> concerned = Set.of("a pest that is not there", "which pests there are", "how many pests",
                "all pests", "pests from l", "reviewed");
        assertEquals(concerned, remade(READINGS));
        Files.delete(content.resolve("pests/onion-thrips.yaml"));
        assertEquals(concerned, remade(READINGS));
    }

    @Test
    void aBrokenFileIsUnreadAndGoneFromItsPart() throws IOException {
        round(Map.of("unread", base -> base.unread().keySet().toString()));
        save("pests/leek-moth.yaml", "id: [");
        round(Map.of("unread", base -> base.unread().keySet().toString()));
        assertEquals(List.of("unread"), made);
    }

    @Test
    void aFigureIsItsImageAndItsNote() throws IOException {
        round(READINGS);
        Set<String> concerned = Set.of("a figure", "drawings of a pest");
        edit("figures/leek-moth-adult.yaml");
        assertEquals(concerned, remade(READINGS));
        Path image = content.resolve("figures/leek-moth-adult.svg");
        Files.writeString(image, Files.readString(image) + "\n");
        assertEquals(concerned, remade(READINGS));
    }

    @Test
    void ofALanguageEveryFileCountsByItself() throws IOException {
        round(READINGS);
        edit("es/pests/leek-moth.yaml");
        assertEquals(Set.of("a translated file", "all translations"), remade(READINGS));
        edit("es/pests/onion-maggot.yaml");
        assertEquals(Set.of("all translations"), remade(READINGS));
        edit("es/glossary.yaml");
        assertEquals(Set.of("a translated file", "a glossary", "all translations"), remade(READINGS));
    }

    @Test
    void aFoldSchemeIsItsFile() throws IOException {
        round(READINGS);
        String scheme = "scheme roll-9\ntitle Roll\nsheet landscape\ncolumns 1 1 1 1\nrows 1\n"
                + "fold x3 right over\nfold x2 right over\nfold x1 left over\n";
        save("schemes/roll-9.fold", scheme);
        assertEquals(Set.of("a fold scheme"), remade(READINGS));
        assertEquals(Set.of(), remade(READINGS));
        save("schemes/roll-9.fold", scheme.replace("title Roll", "title Rolled"));
        assertEquals(Set.of("a fold scheme"), remade(READINGS));
    }

    /** Pages take a base in the order of names; of an order only the ids are told, but it is read all the same. */
    @Test
    void anotherOrderConcernsThoseWhoReadWhatThereIs() throws IOException {
        alphabet = Optional.of(Alphabet.of("en"));
        round(READINGS);
        Path file = content.resolve("pests/leek-moth.yaml");
        String text = Files.readString(file);
        Files.writeString(file, text.replace("common: leek moth", "common: loud moth"));
        assertFalse(remade(READINGS).contains("which pests there are"), "it still stands before the onion maggot");
        Files.writeString(file, text.replace("common: leek moth", "common: zebra moth"));
        assertTrue(remade(READINGS).contains("which pests there are"));
    }

    @Test
    void everythingLeansOnTheEdition() throws IOException {
        round(READINGS);
        edit("edition.yaml");
        assertEquals(READINGS.keySet(), remade(READINGS));
    }

    @Test
    void aFileWithoutAHashIsNeverTheSame() throws IOException {
        LoadedBase loaded = BaseLoader.load(content);
        Map<String, String> hashes = loaded.inputs().stream().filter(file ->
                !file.path().endsWith("leek-moth.yaml")).collect(
                        Collectors.toMap(InputFile::path, InputFile::sha256));
        for (int i = 0; i < 2; i++) {
            made.clear();
            KeptResults<String>.Round round = kept.round(loaded.base().orElseThrow(), hashes);
            for (String pest : List.of("leek-moth", "onion-maggot")) {
                round.take(pest, "", read -> {
                    made.add(pest);
                    return read.pests().get(pest).value().id();
                });
            }
            round.end();
        }
        assertEquals(List.of("leek-moth"), made);
    }

    @Test
    void aRoundThatDidNotEndLeavesNothingBehind() throws IOException {
        round(Map.of("one", base -> base.pests().get("leek-moth").value()));
        edit("pests/leek-moth.yaml");
        LoadedBase loaded = BaseLoader.load(content);
        kept.round(loaded.base().orElseThrow(), Map.of()).take("one", "", read -> "broken off");
        assertEquals(Set.of("one"), remade(Map.of("one", base -> base.pests().get("leek-moth").value())));
    }

    @Test
    void whatElseAResultIsMadeOfCounts() throws IOException {
        LoadedBase loaded = BaseLoader.load(content);
        Map<String, String> hashes = loaded.inputs().stream().collect(
                Collectors.toMap(InputFile::path, InputFile::sha256));
        for (String of : List.of("a", "a", "b")) {
            KeptResults<String>.Round round = kept.round(loaded.base().orElseThrow(), hashes);
            assertEquals("made of " + of, round.take("one", of, read -> {
                made.add(of);
                return "made of " + of;
            }));
            round.end();
        }
        assertEquals(List.of("a", "b"), made);
    }

    @Test
    void whatIsMadeOfAnotherResultGoesWithIt() throws IOException {
        for (List<String> again : List.of(List.of("pest", "of it"), List.<String>of(), List.of("pest", "of it"))) {
            if (again.size() > 0 && !made.isEmpty()) {
                edit("pests/leek-moth.yaml");
            }
            LoadedBase loaded = BaseLoader.load(content);
            KeptResults<String>.Round round = kept.round(loaded.base().orElseThrow(), hashes(loaded));
            List<String> now = new ArrayList<>();
            round.take("pest", "", read -> note("pest", now, read.pests().get("leek-moth")));
            round.take("of it", "", List.of("pest"), read -> note("of it", now, read.crops().get("onion")));
            List<String> lost = new ArrayList<>();
            round.take("of another", "", List.of("nobody took this"), read -> note("of another", lost,
                    read.crops().get("onion")));
            assertEquals(again, now);
            assertEquals(List.of("of another"), lost);
            round.end();
            made.addAll(now);
            made.add("once");
        }
    }

    private static String note(String name, List<String> now, Object read) {
        now.add(name);
        return String.valueOf(read);
    }

    private static Map<String, String> hashes(LoadedBase loaded) {
        return loaded.inputs().stream().collect(Collectors.toMap(InputFile::path, InputFile::sha256));
    }

    /** Of a base in another language a record is read from two files, its own and its translation. */
    @Test
    void inALanguageARecordIsItsFileAndItsTranslation() throws IOException {
        assertEquals(Set.of("leek-moth", "onion-maggot", "onion"), saidAgain());
        assertEquals(Set.of(), saidAgain());
        edit("es/pests/leek-moth.yaml");
        assertEquals(Set.of("leek-moth"), saidAgain());
        edit("pests/onion-maggot.yaml");
        assertEquals(Set.of("onion-maggot"), saidAgain());
        save("es/crops.yaml", Files.readString(DEMO.resolve("es/crops.yaml")));
        assertEquals(Set.of("onion"), saidAgain());
        edit("es/glossary.yaml");
        assertEquals(Set.of(), saidAgain());
        save("es/edition.yaml", Files.readString(DEMO.resolve("es/edition.yaml")));
        assertEquals(Set.of("leek-moth", "onion-maggot", "onion"), saidAgain());
    }

    /** Whoever asked for the ids alone saw them in the order of that base. */
    @Test
    void inALanguageTheOrderIsThatOfTheLanguage() throws IOException {
        LoadedBase loaded = BaseLoader.load(DEMO);
        ContentBase base = loaded.base().orElseThrow();
        ContentBase byId = TranslatedBase.in(base, "es");
        ContentBase byName = Alphabet.of("es").order(byId);
        assertNotEquals(List.copyOf(byId.pests().keySet()), List.copyOf(byName.pests().keySet()));
        List<String> now = new ArrayList<>();
        for (ContentBase said : List.of(byId, byId, byName, byName)) {
            KeptResults<String>.Round round = kept.round(said, base, "es", TranslatedBase::file, hashes(loaded));
            round.take("ids", "", read -> note(read.pests().keySet().iterator().next(), now, ""));
            round.end();
        }
        assertEquals(List.of(byId.pests().firstKey(), byName.pests().firstKey()), now);
    }

    private Set<String> saidAgain() throws IOException {
        LoadedBase loaded = BaseLoader.load(content);
        ContentBase base = loaded.base().orElseThrow();
        List<String> now = new ArrayList<>();
        KeptResults<String>.Round round = kept.round(TranslatedBase.in(base, "es"), base, "es", TranslatedBase::file,
                hashes(loaded));
        List.of("leek-moth", "onion-maggot").forEach(pest -> round.take(pest, "", read ->
                note(pest, now, read.pests().get(pest))));
        round.take("onion", "", read -> note("onion", now, read.crops().get("onion")));
        round.end();
        return Set.copyOf(now);
    }

    /** A part that joins the base later is watched under its own name, or this fails. */
    @Test
    void everyPartOfABaseIsWatched() throws IOException {
        ContentBase base = BaseLoader.load(DEMO).base().orElseThrow();
        for (RecordComponent component : Keys.components(base)) {
            if (Keys.value(base, component) instanceof SortedMap<?, ?> records) {
                Changes one = new Changes(false, Map.of(component.getName(), Set.of("x")),
                        Set.of(component.getName()));
                Stream<Function<SortedMap<?, ?>, Object>> readings = Stream.of(map -> map.get("x"),
                        map -> map.containsKey("x"), SortedMap::size, SortedMap::isEmpty,
                        map -> map.keySet().size(), map -> map.values().size(), map -> map.entrySet().size(),
                        map -> map.headMap(null == map.comparator() ? cast("x") : null).size(),
                        map -> map.getOrDefault("x", null), Object::hashCode);
                readings.forEach(reading -> {
                    Trace trace = new Trace();
                    SortedMap<?, ?> watched = (SortedMap<?, ?>) Keys.value(WatchedBase.of(base, trace), component);
                    assertFalse(trace.meets(one), component.getName());
                    reading.apply(watched);
                    assertTrue(trace.meets(one), component.getName());
                });
                assertEquals(records.keySet(), ((SortedMap<?, ?>) Keys.value(
                        WatchedBase.of(base, new Trace()), component)).keySet());
            }
        }
    }

    @SuppressWarnings("unchecked")
    private static <K> K cast(Object id) {
        return (K) id;
    }
}
