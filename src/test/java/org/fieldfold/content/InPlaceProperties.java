package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.CommentEvent;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/**
 * Any value of any file of the demo base, set to anything: the YAML library's own loader and its own reading
 * of comments judge that nothing else changed, and so do the lines.
 */
class InPlaceProperties {
    private static final LoadSettings STRINGS = LoadSettings.builder().setSchema(new FailsafeSchema())
            .setParseComments(false).build();
    private static final List<Path> FILES = files();

    private static List<Path> files() {
        try (Stream<Path> content = Files.walk(Path.of("content"))) {
            return content.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Provide
    Arbitrary<Path> demoFiles() {
        return Arbitraries.of(FILES);
    }

    @Provide
    Arbitrary<String> values() {
        return Arbitraries.oneOf(Arbitraries.of("2027-12-01", "3", "0.5", "true", "null", "~", "- a", "a: b",
                "x #y", "*x*", "[", "}", "'", "\"", "@a", "a, b", " lead", "trail ", "two\nlines", "\n",
                "\u00a0", "’", "\uD83D\uDC1B", "---", "", "|", ">", "%x", "? y"),
                Arbitraries.strings().ofMaxLength(20)
                        .excludeChars('\uFEFF', '\uFFFE', '\uFFFF').filter(InPlaceProperties::isWhole));
    }

    /** No half of a surrogate pair, which a file cannot hold, and nothing unseen, which may not stand in one. */
    private static boolean isWhole(String text) {
        return text.codePoints().noneMatch(c -> c >= 0xD800 && c <= 0xDFFF || UnseenCharacters.isUnseen(c));
    }

    @Property(tries = 600)
    void settingAValueLeavesAllElse(@ForAll("demoFiles") Path path, @ForAll("values") String value,
            @ForAll int pick, @ForAll boolean crlf, @ForAll boolean mark) throws Exception {
        String before = form(Files.readString(path), crlf, mark);
        List<List<Object>> paths = new ArrayList<>();
        Object tree = load(before);
        scalars(tree, List.of(), paths);
        List<Object> place = paths.get(Math.floorMod(pick, paths.size()));
        InPlace edited = InPlace.of("x", before.getBytes(StandardCharsets.UTF_8))
                .set(value, place.toArray());
        String after = new String(edited.bytes(), StandardCharsets.UTF_8);
        set(tree, place, value);
        assertEquals(stripped(tree), stripped(load(after)), place.toString());
        assertEquals(comments(before), comments(after));
        onlyOneStretchChanged(before, after);
        assertEquals(mark, after.startsWith("\uFEFF"));
        assertFalse(crlf && after.replace("\r\n", "").contains("\n"), "line ends stay");
    }

    @Property(tries = 300)
    void addingAKeyAndTakingItOutGivesTheSameBytes(@ForAll("demoFiles") Path path, @ForAll int pick,
            @ForAll boolean crlf, @ForAll boolean mark) throws Exception {
        String before = form(Files.readString(path), crlf, mark);
        List<List<Object>> maps = new ArrayList<>();
        Object tree = load(before);
        maps(tree, List.of(), maps);
        List<Object> place = new ArrayList<>(maps.get(Math.floorMod(pick, maps.size())));
        place.add("new-key");
        InPlace added = InPlace.of("x", before.getBytes(StandardCharsets.UTF_8))
                .put("some value", place.toArray());
        String with = new String(added.bytes(), StandardCharsets.UTF_8);
        set(tree, place, "some value");
        assertEquals(stripped(tree), stripped(load(with)));
        assertEquals(comments(before), comments(with));
        assertTrue(with.replaceFirst("(\r\n|\n)?[^\\S\r\n]*new-key: some value|, new-key: some value", "")
                .equals(before), "only the new key is new");
        assertEquals(before, new String(added.remove(place.toArray()).bytes(), StandardCharsets.UTF_8));
    }

    private static String form(String text, boolean crlf, boolean mark) {
        return (mark ? "\uFEFF" : "") + (crlf ? text.replace("\n", "\r\n") : text);
    }

    private static Object load(String text) {
        return new Load(STRINGS).loadFromString(text.replace("\uFEFF", ""));
    }

    private static List<String> comments(String text) {
        List<String> comments = new ArrayList<>();
        new Parse(LoadSettings.builder().setParseComments(true).build())
                .parseString(text.replace("\uFEFF", "")).forEach(event -> {
                    if (event instanceof CommentEvent comment && !comment.getValue().isBlank()) {
                        comments.add(comment.getValue().strip());
                    }
                });
        return comments;
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

    private static void maps(Object node, List<Object> at, List<List<Object>> found) {
        if (node instanceof Map<?, ?> map) {
            found.add(at);
            map.forEach((key, value) -> maps(value, with(at, key), found));
        } else if (node instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                maps(list.get(i), with(at, i), found);
            }
        }
    }

    private static List<Object> with(List<Object> path, Object step) {
        List<Object> longer = new ArrayList<>(path);
        longer.add(step);
        return longer;
    }

    @SuppressWarnings("unchecked")
    private static void set(Object tree, List<Object> path, String value) {
        Object node = tree;
        for (Object step : path.subList(0, path.size() - 1)) {
            node = node instanceof List<?> list ? list.get((Integer) step) : ((Map<?, ?>) node).get(step);
        }
        Object last = path.get(path.size() - 1);
        if (node instanceof List<?> list) {
            ((List<Object>) list).set((Integer) last, value);
        } else {
            ((Map<Object, Object>) node).put(last, value);
        }
    }

    /** Blanks at the end of a text are no part of it: the reader of texts takes them off. */
    private static Object stripped(Object node) {
        if (node instanceof Map<?, ?> map) {
            Map<Object, Object> copy = new LinkedHashMap<>();
            map.forEach((key, value) -> copy.put(key, stripped(value)));
            return copy;
        }
        return node instanceof List<?> list ? list.stream().map(InPlaceProperties::stripped).toList()
                : String.valueOf(node).stripTrailing();
    }

    /** Of the lines before, those in front of and behind one stretch stand as they stood. */
    private static void onlyOneStretchChanged(String before, String after) {
        List<String> was = Arrays.asList(before.split("(?<=\n)", -1));
        List<String> is = Arrays.asList(after.split("(?<=\n)", -1));
        int head = 0;
        while (head < Math.min(was.size(), is.size()) && was.get(head).equals(is.get(head))) {
            head++;
        }
        int tail = 0;
        while (tail < Math.min(was.size(), is.size()) - head
                && was.get(was.size() - 1 - tail).equals(is.get(is.size() - 1 - tail))) {
            tail++;
        }
        List<String> gone = was.subList(head, was.size() - tail);
        assertTrue(gone.size() <= 1 || gone.stream().skip(1).allMatch(line -> line.startsWith("  ")
                        || line.isBlank()),
                "one value, and the lines of its block: " + gone);
    }
}
