package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.Optional;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Translation;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;
import org.fieldfold.source.Spans;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HardLimitsTest {
    @TempDir
    Path temporary;

    /** A record that refuses some of its values, as those of the model may come to do. */
    record Pair(int from, int to) {
        Pair {
            if (from > to) {
                throw new IllegalArgumentException("from must not be above to, found " + from + " and " + to);
            }
        }
    }

    @Test
    void whatARecordRefusesIsAFinding() {
        List<Finding> findings = new ArrayList<>();
        YamlReading reading = YamlReading.read(new SourceFile("x.yaml", "{from: 3, to: 2}"), findings);
        Binder binder = new Binder(reading, Optional.empty(), findings);
        assertEquals(Optional.empty(), binder.bind(reading.root().orElseThrow(), Shapes.of(Pair.class), ""));
        assertEquals(List.of("x.yaml:1:1: error: expected values that fit together, found: from must not "
                + "be above to, "
                + "found 3 and 2 [bad-value] hint: change one of them"), findings.stream().map(Base::shown)
                        .toList());
    }

    @Test
    void aParagraphWithoutEnd() {
        String text = "Do **not** wait. ".repeat(400);
        assertEquals(List.of("content/chapters/a.md:1:8: error: expected paragraphs of at most 5000 "
                + "characters, found "
                + "one of 6799 [paragraph-too-long] hint: put blank lines between its paragraphs"),
                new Base(temporary).with("chapters/a.md", "# Title\n\n" + text).findings());
    }

    @Test
    void aFileThatIsGoneBeforeItIsRead() {
        ContentFile gone = new ContentFile("content/pests/a.yaml", temporary.resolve("gone"), FileKind.PEST,
                "a");
        assertEquals(List.of("content/pests/a.yaml:1:1: error: expected a file that can be read, found none: "
                + "NoSuchFileException [unreadable-file] hint: look at the file's permissions"),
                FileReading.read(gone).findings().stream().map(Base::shown).toList());
        assertEquals(List.of("a"), List.copyOf(FileReading.read(gone).unread().keySet()));
    }

    private static List<String> yaml(String text) {
        List<Finding> findings = new ArrayList<>();
        YamlReading.read(new SourceFile("x.yaml", text), findings);
        return findings.stream().map(Base::shown).toList();
    }

    @Test
    void fiftyThousandValuesAreReadAndOneMoreIsNot() {
        // the list itself is a value
        assertEquals(List.of(), yaml("[" + "1,".repeat(YamlComposer.MOST_VALUES - 1) + "]"));
        assertEquals(List.of("x.yaml:1:100000: error: expected at most 50000 values in a file, found more "
                + "[file-too-large] hint: split the file"), yaml("[" + "1,".repeat(YamlComposer.MOST_VALUES) + "]"));
    }

    private static List<Finding> slips(int count) {
        StringBuilder text = new StringBuilder("name: A\ntier: 2\nkind: row-cover\nsummary: B\n");
        for (int i = 0; i < count; i++) {
            text.append("zz").append(i).append(": 1\n");
        }
        return FileReading.of(new ContentFile("content/practices/a.yaml", Path.of("a"), FileKind.PRACTICE, "a"),
                text.toString().getBytes(StandardCharsets.UTF_8)).findings();
    }

    @Test
    void fiveHundredFindingsOfAFileAreSaidAndThatThereAreMore() {
        String more = "mend the first ones: there are more than 500 in this file, and this is the last that is said";
        assertEquals(500, slips(500).size());
        assertEquals(0, slips(500).stream().filter(finding -> finding.hint().equals(more)).count());
        for (int many : new int[] {501, 5_000}) {
            assertEquals(501, slips(many).size());
            assertEquals(more, slips(many).get(500).hint());
        }
    }

    /** Ten thousand together: as many of each file as there is room for, whichever file has most. */
    @Test
    void tenThousandFindingsOfAllFilesAreSaid() {
        SourceFile full = new SourceFile("content/a.yaml", "x".repeat(20_000));
        SourceFile other = new SourceFile("content/b.yaml", "x".repeat(20_000));
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < FewFindings.MOST_TOGETHER - 7; i++) {
            findings.add(FormRule.BAD_ID.at(new Span(full, i, i), "a", "b"));
        }
        for (int i = 0; i < 7; i++) {
            findings.add(FormRule.BAD_ID.at(new Span(other, i, i), "a", "b"));
        }
        assertEquals(findings, FewFindings.ofAll(findings));
        findings.add(FormRule.BAD_ID.at(new Span(other, 7, 7), "a", "b"));
        List<Finding> few = FewFindings.ofAll(findings);
        assertEquals(FewFindings.MOST_TOGETHER - 8 + 1 + 8, few.size());
        assertEquals("mend the first ones: there are more than 9992 in this file, and this is the last that is said",
                few.get(FewFindings.MOST_TOGETHER - 8).hint());
        assertEquals(findings.subList(FewFindings.MOST_TOGETHER - 7, findings.size()), few.subList(few.size() - 8,
                few.size()));
        assertEquals(List.of(500, 500, 104, 2, 1), List.of(1, 100, 477, 20_000, 1_000_000).stream()
                .map(FewFindings::ofEach).toList());
    }

    @Test
    void anErrorBehindManyNotesIsStillSaid() {
        SourceFile file = new SourceFile("content/a.yaml", "x".repeat(20_000));
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < FewFindings.MOST_TOGETHER; i++) {
            findings.add(FormRule.UNEXPECTED_FILE.at(new Span(file, i, i), "a", "b"));
        }
        Finding error = FormRule.BAD_ID.at(new Span(file, 19_999, 19_999), "a", "b");
        findings.add(error);
        List<Finding> few = FewFindings.ofAll(findings);
        assertEquals(error, few.get(few.size() - 1));
        assertEquals(FewFindings.MOST_TOGETHER + 1, few.size());
    }

    private void sized(Base base, String path, long size) throws IOException {
        base.with(path, "");
        try (RandomAccessFile file = new RandomAccessFile(base.folder().resolve(path).toFile(), "rw")) {
            file.setLength(size);
        }
    }

    @Test
    void twoHundredAndFiftySixMebibytesAreReadAndNoFileBehindThem() throws IOException {
        Base base = new Base(temporary);
        for (int i = 0; i < 51; i++) {
            sized(base, "figures/f" + i + ".png", 5 << 20);
        }
        sized(base, "practices/a.yaml", (1 << 20) - Base.EDITION.length());
        Folder full = new Folder(base.folder());
        assertEquals(List.of(), full.findings());
        assertEquals(53, full.files().size());
        base.with("practices/b.yaml", "x").with("weather/w.csv", "x");
        Folder more = new Folder(base.folder());
        assertEquals(List.of("content/practices/b.yaml:1:1: error: expected files of at most 256 MiB together, found "
                + "more [too-many-files] hint: split the content base"),
                more.findings().stream().map(Base::shown).toList());
        assertEquals(53, more.files().size());
    }

    @Test
    void aFileIsReadUpToItsLimit() throws IOException {
        Base base = new Base(temporary).with("practices/a.yaml", "#".repeat(1 << 20)).with("weather/w.csv",
                "x".repeat(5 << 20));
        assertEquals(List.of("bad-weather-row", "empty-file"), base.load().findings().stream().map(Finding::rule)
                .distinct().sorted().toList());
    }

    /** Made of one reading that every file shares: two million real ones take a minute. */
    @Test
    void twoMillionValuesOfAllFilesAreReadAndNoFileBehindThem() throws IOException {
        Base base = new Base(temporary);
        for (int i = 0; i < 42; i++) {
            base.with("es/practices/p" + (char) ('a' + i / 10) + i % 10 + ".yaml", "x");
        }
        Map<String, Span> places = new HashMap<>();
        SourceFile source = new SourceFile("content/es/x.yaml", "");
        for (int i = 0; i < YamlComposer.MOST_VALUES; i++) {
            places.put("a/" + i, Span.startOf(source));
        }
        Object page = new Translation.Page(Span.startOf(source), List.of());
        Placed<Object> whole = new Placed<>(page, new Spans(source, places));
        long edition = FileReading.read(new ContentFile("content/edition.yaml", base.folder().resolve("edition.yaml"),
                FileKind.EDITION, "edition")).values();
        places.keySet().removeAll(LongStream.range(0, edition).mapToObj(i -> "a/" + i).toList());
        Placed<Object> one = new Placed<>(page, new Spans(source, Map.of("a", Span.startOf(source))));
        Placed<Object> rest = new Placed<>(page, new Spans(source, places));
        LoadedBase loaded = BaseLoader.load(base.folder(), file -> file.kind() == FileKind.EDITION
                ? FileReading.read(file) : new FileReading(file, new InputFile(file.path(), 1, ""), source, new byte[0],
                        Map.of("x", file.id().endsWith("pa0") ? rest : file.id().contains("pe") ? one : whole),
                        Map.of(), List.of(), List.of()));
        assertEquals(List.of("content/es/practices/pe0.yaml:1:1: error: expected at most 2000000 values in all files "
                + "together, found more [too-many-files] hint: split the content base; this file and those behind it "
                + "are not read"), loaded.findings().stream().map(Base::shown).toList());
        assertEquals(42, loaded.inputs().size());
    }

    @Test
    void aFolderWithTooManyFiles() throws IOException {
        Path weather = Files.createDirectories(new Base(temporary).folder().resolve("weather"));
        for (int i = 0; i < Folder.MOST_FILES + 5; i++) {
            Files.createFile(weather.resolve("w" + i + ".csv"));
        }
        Folder folder = new Folder(weather.getParent());
        assertEquals(Folder.MOST_FILES, folder.files().size());
        assertEquals(List.of("too-many-files"), folder.findings().stream().map(Finding::rule).toList());
    }
}
