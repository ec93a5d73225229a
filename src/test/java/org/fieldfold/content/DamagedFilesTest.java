package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.Test;

/** Whatever is in a file: findings, never an exception, never a hang. */
class DamagedFilesTest {
    /** So many files of each kind, up to this size, are cut at every byte; all others at every line. */
    private static final int OF_A_KIND = 4;
    private static final int SMALL = 4_000;
    private static final String SIGNS = "[]{}:#-\"'|>*&!%@`\t \n,?";
    private static final Path CONTENT = Path.of("content");
    private static final Path SAMPLES = Path.of("src/test/resources/org/fieldfold/content/samples");

    private record Sample(FileKind kind, byte[] bytes) {
    }

    private static List<Sample> samples(Path root, String crops) {
        try (Stream<Path> files = Files.walk(root)) {
            List<Sample> samples = new ArrayList<>();
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                if (file.toString().contains("/.")) {
                    continue;
                }
                String folder = root.relativize(file).getNameCount() == 1 ? "" : file.getParent()
                        .getFileName().toString();
                FileKind kind = folder.equals(crops) ? FileKind.CROPS
                        : FileKind.of(folder, file.getFileName().toString()).orElse(FileKind.LEDGER);
                byte[] bytes = Files.readAllBytes(file);
                // the twenty thousand rows of a weather file are alike
                samples.add(new Sample(kind, kind == FileKind.WEATHER ? Arrays.copyOf(bytes, 3_000) : bytes));
            }
            return samples;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One file of each kind, the largest up to 20 kB: what is written for one holds for the others. */
    private static List<Sample> shipped() {
        return samples(CONTENT, "-").stream().filter(sample -> sample.bytes.length < 20_000)
                .sorted(Comparator.comparingInt((Sample sample) -> -sample.bytes.length))
                .collect(java.util.stream.Collectors.toMap(Sample::kind, sample -> sample, (a, b) -> a,
                        TreeMap::new)).values().stream().toList();
    }

    private static List<Finding> read(FileKind kind, byte[] bytes) {
        FileReading reading = FileReading.of(new ContentFile("content/x", Path.of("x"), kind, "x"), bytes);
        for (Finding finding : reading.findings()) {
            assertTrue(finding.span().end() <= finding.span().file().text().length(), "within its file: "
                    + finding);
            assertFalse(finding.message().isBlank(), finding.rule());
        }
        return reading.findings();
    }

    @Test
    void aFileCutAnywhereGivesOnlyFindings() {
        List<Sample> atBytes = new ArrayList<>(samples(SAMPLES, "crops"));
        List<Sample> atLines = new ArrayList<>();
        Map<FileKind, Integer> taken = new TreeMap<>();
        for (Sample sample : samples(CONTENT, "-")) {
            boolean every = sample.bytes.length <= SMALL && taken.merge(sample.kind, 1,
                    Integer::sum) <= OF_A_KIND;
            (every ? atBytes : atLines).add(sample);
        }
        int bytes = assertTimeoutPreemptively(Duration.ofSeconds(300), () -> cut(atBytes, cut -> true));
        int lines = assertTimeoutPreemptively(Duration.ofSeconds(300), () -> cut(atLines, last ->
                last == '\n'));
        assertTrue(bytes > 15_000 && lines > 3_000, "cuts made: " + bytes + " at bytes, " + lines
                + " at lines");
    }

    /** Reads each file up to each of its bytes behind which it is to be cut; gives the number of cuts. */
    private static int cut(List<Sample> samples, IntPredicate behind) {
        return samples.parallelStream().mapToInt(sample -> {
            int cuts = 0;
            for (int cut = 0; cut < sample.bytes.length; cut++) {
                if (behind.test(sample.bytes[cut])) {
                    read(sample.kind, Arrays.copyOf(sample.bytes, cut + 1));
                    cuts++;
                }
            }
            return cuts;
        }).sum();
    }

    @Test
    void whatIsMadeToExhaustAReaderDoesNot() {
        List<String> hostile = List.of(
                "[".repeat(1_000_000), "{a: ".repeat(200_000), "- ".repeat(400_000), "a:\n ".repeat(1_000),
                "? ".repeat(400_000), "\"".repeat(1_000_001), "'".repeat(1_000_001), "&a ".repeat(300_000),
                "a: &a [*a, *a]\nb: &b [*a, *a]", "name: " + "x".repeat(1_000_000), "x".repeat(1_000_000),
                "summary: \"" + "[".repeat(100_000) + "\"", "summary: \"" + "*a_".repeat(100_000) + "\"",
                "summary: |\n  " + "> ".repeat(100_000), "summary: |\n  " + "- ".repeat(50_000),
                "summary: |\n  " + "![".repeat(50_000), "summary: |\n  " + "<a ".repeat(50_000),
                "summary: |\n  " + "`".repeat(3) + "` `` ".repeat(50_000),
                "summary: |\n  " + ("` `` ".repeat(1_900) + "\n\n  ").repeat(20),
                "name: a: b\n".repeat(90_000), "\t- a\n".repeat(150_000), "a: @b\n".repeat(100_000),
                        "%".repeat(500_000),
                "a : b : ".repeat(100_000), "#".repeat(1_000_000), "\n".repeat(1_000_000),
                        "\u0007".repeat(1_000_000));
        for (String text : hostile) {
            String start = text.substring(0, Math.min(20, text.length()));
            List<Finding> findings = assertTimeoutPreemptively(Duration.ofSeconds(60),
                    () -> read(FileKind.PRACTICE, text.getBytes(StandardCharsets.UTF_8)), start);
            assertFalse(findings.isEmpty(), start);
            assertTrue(findings.size() <= 60, start + " gave " + findings.size());
        }
    }

    @Property(tries = 500)
    void aDamagedFileGivesOnlyFindings(@ForAll("damaged") Sample sample) {
        read(sample.kind, sample.bytes);
    }

    @Provide
    Arbitrary<Sample> damaged() {
        Arbitrary<Sample> whole = Arbitraries.of(shipped());
        Arbitrary<List<int[]>> damages = Combinators.combine(Arbitraries.integers().between(0, 3),
                Arbitraries.integers().between(0, 1 << 20), Arbitraries.integers().between(0, 255))
                .as((kind, place, value) -> new int[] {kind, place, value}).list().ofMinSize(1).ofMaxSize(12);
        return Combinators.combine(whole, damages).as((sample, list) -> {
            byte[] bytes = sample.bytes;
            for (int[] damage : list) {
                bytes = damage(bytes, damage[0], bytes.length == 0 ? 0 : damage[1] % bytes.length, damage[2]);
            }
            return new Sample(sample.kind, bytes);
        });
    }

    /** A byte changed, put in, or taken out, or the line at {@code at} doubled. */
    private static byte[] damage(byte[] bytes, int kind, int at, int value) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int behind = kind == 0 || kind == 2 ? Math.min(bytes.length, at + 1) : at;
        if (kind == 3) {
            int from = at;
            while (from > 0 && bytes[from - 1] != '\n') {
                from--;
            }
            out.write(bytes, 0, at);
            out.write('\n');
            out.write(bytes, from, at - from);
        } else {
            out.write(bytes, 0, at);
            if (kind != 2) {
                // half of the time one of YAML's own signs
                out.write(value % 2 == 0 ? value : SIGNS.charAt(value % SIGNS.length()));
            }
        }
        out.write(bytes, behind, bytes.length - behind);
        return out.toByteArray();
    }

    @Test
    void theSamplesAreThere() {
        assertEquals(List.of(FileKind.EDITION, FileKind.CROPS), shipped().stream().map(Sample::kind).limit(2)
                .toList());
    }
}
