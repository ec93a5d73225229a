package org.fieldfold.kept;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptTest {
    private static final SourceFile FILE = new SourceFile("a.yaml", "one\ntwo\nthree\n");

    /** Something said at a place. */
    public record Said(String words, Span at) {
    }

    /** What was made of it. */
    public record Heard(List<Said> all, Optional<Double> loud, int times, boolean twice) {
    }

    @TempDir
    private Path folder;

    private Kept kept(String program) {
        return Kept.in(folder.resolve("kept"), program).naming(Map.of("owl", "1"), Set.of(Said.class));
    }

    private byte[] made(String program, String what) {
        Kept kept = kept(program);
        byte[] bytes = kept.bytes(kept.key(what), () -> (program + " made " + what)
                .getBytes(StandardCharsets.UTF_8));
        kept.tidy();
        return bytes;
    }

    @Test
    void anotherProgramTakesNothing() {
        assertEquals("first made it", new String(made("first", "it"), StandardCharsets.UTF_8));
        assertEquals("second made it", new String(made("second", "it"), StandardCharsets.UTF_8));
        Kept again = kept("first");
        again.bytes(again.key("it"), () -> new byte[0]);
        assertEquals(1, again.taken());
    }

    @Test
    void aValueSpeaksOfPlacesAsTheyAreNow() {
        Span before = new Span(FILE, 0, 3);
        Span now = new Span(new SourceFile("a.yaml", "zero\none\n"), 5, 8);
        Kept first = kept("p");
        Heard heard = new Heard(List.of(new Said("hoo", before)), Optional.of(1.5), 2, true);
        first.value(first.key(new Said("hoo", before)), Heard.class, () -> heard);
        first.tidy();
        Kept second = kept("p");
        Heard taken = second.value(second.key(new Said("hoo", now)), Heard.class, () -> {
            throw new AssertionError("made");
        });
        assertEquals(new Heard(List.of(new Said("hoo", now)), Optional.of(1.5), 2, true), taken);
        assertEquals(2, taken.all().get(0).at().line());
    }

    @Test
    void whatSpeaksOfOtherPlacesIsNotKept() {
        for (int round = 0; round < 2; round++) {
            Kept kept = kept("p");
            List<String> made = new ArrayList<>();
            kept.value(kept.key("x"), Said.class, () -> {
                made.add("once");
                return new Said("x", new Span(FILE, 4, 7));
            });
            kept.save();
            assertEquals(List.of("once"), made);
        }
    }

    @Test
    void onlyTheOrderOfPlacesCounts() {
        Span one = new Span(FILE, 0, 3);
        Span two = new Span(FILE, 4, 7);
        assertEquals(hash(new Said("a", one), new Said("b", two)), hash(new Said("a", two),
                new Said("b", new Span(FILE, 8, 13))));
        assertNotEquals(hash(new Said("a", one), new Said("b", two)), hash(new Said("a", two), new Said("b",
                one)));
        assertNotEquals(hash(new Said("a", one), new Said("b", two)), hash(new Said("a", one), new Said("b",
                one)));
    }

    @Test
    void differentThingsHaveDifferentHashes() {
        List<Object> different = List.of("", "a", "1", 1, 1.0, true, Optional.empty(), Optional.of("a"),
                List.of(),
                List.of("a"), List.of(List.of("a")), List.of("a", "b"), List.of("ab"), List.of("b", "a"),
                -0.0, 0.0,
                "\ud800", "?", "\ud801", new byte[] {1}, new byte[] {1, 1}, new Said("a", new Span(FILE, 0,
                1)),
                new Said("b", new Span(FILE, 0, 1)), java.time.Month.MAY, java.time.LocalDate.of(2027, 1, 1),
                java.time.MonthDay.of(1, 1));
        Set<String> hashes = new java.util.TreeSet<>();
        different.forEach(thing -> hashes.add(hash(thing)));
        assertEquals(different.size(), hashes.size());
        assertNotEquals(hash("a", "b"), hash("ab"));
    }

    @Test
    void whatIsNamedCountsWithItsHash() {
        Kept now = kept("p");
        Kept later = Kept.in(folder, "p").naming(Map.of("owl", "2"), Set.of());
        assertNotEquals(now.key("owl").orElseThrow().hash(), later.key("owl").orElseThrow().hash());
        assertEquals(Set.of("owl"), now.key(List.of(new Said("owl", new Span(FILE, 0, 1)))).orElseThrow()
                .named());
        assertEquals(now.key("crow").orElseThrow().hash(), later.key("crow").orElseThrow().hash());
    }

    @Test
    void whatHasNoFormIsMadeEveryTime() {
        Kept kept = kept("p");
        assertEquals(Optional.empty(), kept.key(new Object()));
        assertEquals(Optional.empty(), kept.key(new Said("x", new Span(FILE, 0, 1)), Map.of("a", "b")
                .entrySet()));
        assertArrayEquals(new byte[] {7}, kept.bytes(kept.key(new Object()), () -> new byte[] {7}));
        assertEquals(1, kept.made());
    }

    /**
     * Builds that read, write and tidy one folder at once get what they ask for, and nothing half written.
     */
    @Test
    void buildsAtOnceDoNotHurtEachOther() throws Exception {
        ExecutorService builds = Executors.newFixedThreadPool(4);
        try {
            List<Future<Integer>> done = new ArrayList<>();
            for (int build = 0; build < 4; build++) {
                int from = build;
                done.add(builds.submit(() -> {
                    int right = 0;
                    for (int round = 0; round < 30; round++) {
                        for (int i = 0; i < 8; i++) {
                            int file = (i + from) % 8;
                            String what = file + "x".repeat(file * 3_000);
                            right += new String(made("p", what), StandardCharsets.UTF_8).equals("p made "
                                    + what)
                                    ? 1 : 0;
                        }
                    }
                    return right;
                }));
            }
            for (Future<Integer> build : done) {
                assertEquals(30 * 8, build.get());
            }
        } finally {
            builds.shutdownNow();
        }
    }

    @Test
    void theFolderStaysSmall() throws IOException {
        for (int round = 0; round < 20; round++) {
            made("p", "round " + round);
        }
        try (var files = Files.list(folder.resolve("kept"))) {
            assertTrue(files.count() <= 6, "three results and three lists");
        }
    }

    @Test
    void whateverStandsInItsPlaceThingsAreMade() throws IOException {
        Files.writeString(folder.resolve("kept"), "a file, not a folder");
        assertEquals("p made it", new String(made("p", "it"), StandardCharsets.UTF_8));
        assertEquals("q made it", new String(made("q", "it"), StandardCharsets.UTF_8));
    }

    /** Small results lie in one file; whatever byte of it is hit, or wherever it ends, no wrong one comes out. */
    @Test
    void aDamagedFileOfSmallResultsSpoilsNoOther() throws IOException {
        Kept first = kept("p");
        for (int i = 0; i < 5; i++) {
            small(first, i);
        }
        first.tidy();
        Path file = folder.resolve("kept/small");
        byte[] whole = Files.readAllBytes(file);
        int taken = 0;
        for (int at = 0; at < whole.length; at++) {
            byte[] damaged = whole.clone();
            damaged[at] ^= 1 << at % 8;
            Files.write(file, damaged);
            Kept one = kept("p");
            Files.write(file, java.util.Arrays.copyOf(whole, at));
            Kept cut = kept("p");
            for (int i = 0; i < 5; i++) {
                taken += small(cut, i) ? 1 : 0;
            }
            Files.write(file, damaged);
            int right = 0;
            for (int i = 0; i < 5; i++) {
                right += small(one, i) ? 1 : 0;
            }
            assertTrue(right < 5, "byte " + at);
        }
        assertTrue(taken > whole.length, "what lies before the damage is taken: " + taken);
    }

    /** Whether it was taken; it is right in any case. */
    private static boolean small(Kept kept, int number) {
        boolean[] made = {false};
        Heard heard = kept.value(kept.key("small", number), Heard.class, () -> {
            made[0] = true;
            return new Heard(List.of(), Optional.of(number + 0.5), number, true);
        });
        assertEquals(new Heard(List.of(), Optional.of(number + 0.5), number, true), heard);
        return !made[0];
    }

    @Test
    void whatAValueWasMadeOfBesidesItsKeyIsAskedForAgain() {
        Kept first = kept("p");
        Heard loud = new Heard(List.of(), Optional.of(9.0), 1, false);
        first.value(first.key("owl"), Heard.class, () -> loud);
        first.tidy();
        Kept second = kept("p");
        assertEquals(loud, second.value(second.key("owl"), Heard.class, known -> known.times() == 1, () -> {
            throw new AssertionError("made");
        }));
        Heard other = new Heard(List.of(), Optional.empty(), 2, false);
        assertEquals(other, second.value(second.key("owl"), Heard.class, known -> known.times() == 2, () -> other));
        second.tidy();
        Kept third = kept("p");
        assertEquals(other, third.value(third.key("owl"), Heard.class, known -> true, () -> loud));
    }

    @Test
    void whatABuildSaysOfItselfKeepsItsPlacesAndTheirText() {
        Kept first = kept("p");
        Heard said = new Heard(List.of(new Said("hoo", new Span(FILE, 4, 7)), new Said("ho", new Span(FILE, 8, 13))),
                Optional.empty(), 1, true);
        first.say(first.key("build"), said);
        Kept second = kept("p");
        Heard recalled = second.recall(second.key("build"), Heard.class).orElseThrow();
        assertEquals(said, recalled);
        assertEquals("three", recalled.all().get(1).at().file().lineText(3));
        assertEquals(Optional.empty(), second.recall(second.key("other build"), Heard.class));
    }

    private String hash(Object... parts) {
        return kept("p").key(parts).orElseThrow().hash();
    }
}
