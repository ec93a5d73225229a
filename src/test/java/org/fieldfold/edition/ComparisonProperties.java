package org.fieldfold.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.content.InPlace;
import org.fieldfold.entry.ContentBase;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/**
 * Every edit of an entry that its form permits is told, once and under its heading; edits that change no fact
 * are not told. Entries and materials of the demo base, edited in their files and read as any base is.
 */
class ComparisonProperties {
    private static final List<String> ENTRIES = List.of("pests/onion-thrips", "pests/colorado-potato-beetle",
            "pests/striped-cucumber-beetle", "pests/corn-earworm", "pests/codling-moth", "pests/imported-cabbageworm",
            "natural-enemies/trichogramma-wasp", "natural-enemies/ground-beetle", "natural-enemies/aphidius-wasp",
            "practices/insect-net", "practices/trap-crop", "practices/low-tunnel");
    private static final String MATERIALS = "active-ingredients";

    /** Who stands behind it since when, which is told elsewhere. */
    private static final List<String> SIGNED = List.of("revised", "reviser", "carried-over", "signed-facts",
            "signed-with", "label-checked");

    /** Headings by the first key; the tier decides for controls. */
    private static final Map<String, ChangeGroup> HEADINGS = Map.ofEntries(
            Map.entry("names", ChangeGroup.IDENTIFICATION), Map.entry("crops", ChangeGroup.IDENTIFICATION),
            Map.entry("figures", ChangeGroup.IDENTIFICATION),
            Map.entry("stages", ChangeGroup.IDENTIFICATION), Map.entry("damage", ChangeGroup.IDENTIFICATION),
            Map.entry("look-alikes", ChangeGroup.IDENTIFICATION),
            Map.entry("year", ChangeGroup.IDENTIFICATION),
            Map.entry("overwinters", ChangeGroup.IDENTIFICATION),
            Map.entry("monitoring", ChangeGroup.MONITORING),
            Map.entry("thresholds", ChangeGroup.THRESHOLDS), Map.entry("spare", ChangeGroup.MEASURES),
            Map.entry("cautions", ChangeGroup.CAUTIONS), Map.entry("keeps-down", ChangeGroup.MEASURES),
            Map.entry("helps", ChangeGroup.MEASURES), Map.entry("conserve", ChangeGroup.MEASURES),
            Map.entry("release", ChangeGroup.MEASURES));

    /** Texts that are the advice itself. */
    private static final List<String> ADVICE = List.of("measure", "when", "comes-off", "bees", "note",
            "reason", "act", "steps", "watch", "irrigation", "ventilation", "weeds", "conserve", "release");

    /** Texts that describe. */
    private static final List<String> DESCRIPTION = List.of("looks", "found", "mark", "text", "year", "how", "summary",
            "helps");

    private static Path content;
    private static Snapshot before;

    @BeforeContainer
    static void lay() throws IOException {
        content = Files.createTempDirectory("compare");
        for (String folder : List.of("pests", "natural-enemies", "practices")) {
            Files.createDirectories(content.resolve(folder));
        }
        for (String file : List.of("edition", "crops", "active-ingredients", "sources")) {
            Files.copy(Path.of("content", file + ".yaml"), content.resolve(file + ".yaml"));
        }
        for (String entry : ENTRIES) {
            Files.copy(demo(entry), file(entry));
        }
        before = Snapshot.of(load());
        assertEquals(ENTRIES.size(), List.of("pests", "enemies", "practices").stream()
                .mapToInt(kind -> before.records().get(kind).size()).sum());
    }

    @AfterContainer
    static void clear() throws IOException {
        try (var files = Files.walk(content)) {
            for (Path file : files.sorted(Collections.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    private static Path demo(String entry) {
        return Path.of("content", entry + ".yaml");
    }

    private static Path file(String entry) {
        return content.resolve(entry + ".yaml");
    }

    private static ContentBase load() throws IOException {
        return BaseLoader.load(content).base().orElseThrow();
    }

    /** What is told of an entry whose file reads like this; empty when it cannot be read any more. */
    private static Optional<Comparison> told(String entry, byte[] bytes) throws IOException {
        try {
            Files.write(file(entry), bytes);
            ContentBase base = load();
            return base.unread().isEmpty()
                    ? Optional.of(Comparison.of("before", before, "after", Snapshot.of(base)))
                    : Optional.empty();
        } finally {
            Files.write(file(entry), Files.readAllBytes(demo(entry)));
        }
    }

    @Provide
    Arbitrary<String> entries() {
        return Arbitraries.of(ENTRIES);
    }

    @Provide
    Arbitrary<String> entriesAndMaterials() {
        return Arbitraries.frequencyOf(Tuple.of(5, entries()),
                Tuple.of(1, Arbitraries.just(MATERIALS)));
    }

    @Property(tries = 400)
    void everyEditIsToldOnceUnderItsHeading(@ForAll("entriesAndMaterials") String entry, @ForAll int pick)
            throws Exception {
        byte[] bytes = Files.readAllBytes(demo(entry));
        List<List<Object>> paths = new ArrayList<>();
        Object tree = new Load(LoadSettings.builder().setSchema(new FailsafeSchema()).build())
                .loadFromString(new String(bytes, StandardCharsets.UTF_8));
        scalars(tree, List.of(), paths);
        List<Object> path = paths.get(Math.floorMod(pick, paths.size()));
        Assume.that(path.stream().noneMatch(SIGNED::contains));
        InPlace file = InPlace.of("x", bytes);
        String old = file.value(path.toArray()).orElseThrow();
        String value = old.matches("[0-9.]+") ? old.contains(".") ? old + "5" : old + "1"
                : old.contains(" ") ? "Other words. " + old.stripTrailing() : old + "x";
        Optional<Comparison> told = told(entry, file.set(value, path.toArray()).bytes());
        Assume.that(told.isPresent());
        List<Change> changes = told.get().changes();
        assertTrue(changes.size() >= 1, path + ": " + old + " -> " + value + " is not told");
        // one key that names an item, such as its id, makes another item of it
        boolean renamed = changes.size() == 2 && changes.get(0).parts().size() == 1;
        assertTrue(changes.size() == 1 || renamed, path + " is told as " + told.get().text());
        changes.forEach(change -> assertEquals(heading(entry, tree, path), change.group(),
                path + ": " + change.sentence()));
        String id = entry.equals(MATERIALS)
                ? String.valueOf(((Map<?, ?>) ((List<?>) ((Map<?, ?>) tree).get(MATERIALS)).get((Integer) path.get(1)))
                        .get("id")) : entry.substring(entry.indexOf('/') + 1);
        changes.forEach(change -> assertTrue(change.id().equals(id) || renamed && change.id().startsWith(id),
                change.id() + " in place of " + id));
    }

    private static ChangeGroup heading(String entry, Object tree, List<Object> path) {
        List<String> keys = path.stream().filter(String.class::isInstance).map(String.class::cast).toList();
        String last = keys.get(keys.size() - 1);
        boolean longer = last.equals("handbook") || last.equals("garden");
        String field = longer || last.equals("pocket") ? keys.get(keys.size() - 2) : last;
        boolean describes = DESCRIPTION.contains(field) || longer && ADVICE.contains(field);
        if (describes && !keys.get(0).equals("cautions")) {
            return ChangeGroup.WORDING;
        }
        if (entry.equals(MATERIALS)) {
            return ChangeGroup.MATERIALS;
        }
        if (entry.startsWith("practices/")) {
            return keys.get(0).equals("sources") ? ChangeGroup.OTHER : ChangeGroup.MEASURES;
        }
        if (keys.get(0).equals("controls")) {
            Map<?, ?> control = (Map<?, ?>) ((List<?>) ((Map<?, ?>) tree).get("controls")).get(
                    (Integer) path.get(1));
            return control.get("tier").equals("3") ? ChangeGroup.MATERIALS : ChangeGroup.MEASURES;
        }
        return HEADINGS.getOrDefault(keys.get(0), ChangeGroup.OTHER);
    }

    @Property(tries = 120)
    void whatChangesNoFactIsNotTold(@ForAll("entries") String entry, @ForAll long seed) throws Exception {
        Random random = new Random(seed);
        String text = Files.readString(demo(entry));
        List<String> parts = new ArrayList<>(Arrays.asList(text.split("(?m)^(?=[a-z])")));
        String head = parts.remove(0);
        if (random.nextBoolean()) {
            Collections.shuffle(parts, random);
        }
        String moved = head + parts.stream().map(part -> (random.nextBoolean() ? "# moved\n\n" : "") + part)
                .collect(Collectors.joining());
        if (random.nextBoolean()) {
            moved = reflowed(moved, random);
        }
        if (random.nextBoolean()) {
            moved = moved.replaceAll("(?m)^(\\s*counted: )([a-z ]+)$", "$1\"$2\"");
        }
        moved = random.nextBoolean() ? moved.replace("\n", "\r\n") : moved;
        moved = random.nextBoolean() ? "\uFEFF" + moved : moved;
        Comparison told = told(entry, moved.getBytes(StandardCharsets.UTF_8)).orElseThrow();
        assertEquals("from before to after: no fact changed\n", told.text());
    }

    /** The lines of each block broken elsewhere, its paragraphs kept. */
    private static String reflowed(String text, Random random) {
        StringBuilder out = new StringBuilder();
        String indent = "";
        for (String line : text.split("(?<=\n)")) {
            String blank = line.substring(0, line.length() - line.stripLeading().length());
            if (line.endsWith(": |\n")) {
                indent = blank + "  ";
                out.append(line);
            } else if (!indent.isEmpty() && line.startsWith(indent) && !line.isBlank()) {
                String[] words = line.strip().split(" ");
                out.append(indent);
                for (int i = 0; i < words.length; i++) {
                    boolean breaks = random.nextInt(4) == 0 && words[i].matches("[A-Za-z]+");
                    out.append(i == 0 ? "" : breaks ? "\n" + indent : " ").append(words[i]);
                }
                out.append('\n');
            } else {
                indent = line.isBlank() ? indent : "";
                out.append(line);
            }
        }
        return out.toString();
    }

    private static void scalars(Object node, List<Object> at, List<List<Object>> found) {
        if (node instanceof Map<?, ?> map) {
            map.forEach((key, value) -> scalars(value, with(at, key), found));
        } else if (node instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                scalars(list.get(i), with(at, i), found);
            }
        } else {
            found.add(at);
        }
    }

    private static List<Object> with(List<Object> path, Object step) {
        List<Object> longer = new ArrayList<>(path);
        longer.add(step);
        return longer;
    }
}
