package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.fieldfold.FolderCopy;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.report.CsvReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever text comes back in a table: the base has no finding about its form afterwards that it had not before. */
class ImportedTextsTest {
    private static final Path FOLDER = FuzzBase.folder();
    private static final String TRANSLATIONS = "translations";

    /** What a text with Markdown in it may not have, each with words that its refusal has. */
    private static final Map<String, String> BAD = new TreeMap<>(Map.ofEntries(
            Map.entry("Loo<document start>k closely.", "the HTML '<document start>'"),
            Map.entry("Look <!-- not --> here.", "the HTML '<!-- not -->'"),
            Map.entry("<div>Look here.</div>", "the HTML '<div>"),
            Map.entry("See [this](javascript:alert(1)).", "found 'javascript:alert(1)'"),
            Map.entry("See [this](JaVaScRiPt&colon;alert(1)).", "found 'JaVaScRiPt:alert(1)'"),
            Map.entry("See [this](data:text/html;base64,PGI+).", "found 'data:text/html"),
            Map.entry("See [this](beetle).", "found 'beetle'"),
            Map.entry("See [this](entry:no-such-beetle).", "the id of an entry or chapter, found 'no-such-beetle'"),
            Map.entry("See <javascript:alert(1)>.", "found 'javascript:alert(1)'"),
            Map.entry("![a beetle](https://example.org/b.png)", "found image"),
            Map.entry("Look ![a beetle](b.png) here.", "found image"),
            Map.entry("Set `x` here.", "found code"),
            Map.entry("```\nLook here.\n```", "found fenced code block"),
            Map.entry("> Look here.", "found block quote"),
            Map.entry(">", "found block quote"),
            Map.entry("---", "found thematic break"),
            Map.entry("Look here.\n\n---\n\nAnd there.", "found thematic break"),
            Map.entry("Look&#8238; here.", "U+202E"),
            Map.entry("Look&ZeroWidthSpace; here.", "U+200B"),
            Map.entry("Look&#7; here.", "U+0007"),
            Map.entry("Look\u0007 here.", "U+0007"),
            Map.entry("Look\u0085 here.", "U+0085"),
            Map.entry("Look\u202e here.", "U+202E"),
            Map.entry("Look here.\u00a0", "a no-break space"),
            Map.entry("*" + "a ".repeat(3000), "at most 5000 characters")));
    /** What looks as if it were something, and is only words. */
    private static final List<String> ODD = List.of("Look *here and there.", "Look **here.", "Look _here_ and `there.",
            "5 < 6 > 4", "a & b &amp; c &lt;b&gt; &nosuch;", "# Look here", "- look\n- here", "1. look\n2. here",
            "Look: here # now", "'Look' \"here\"", "[look", "](here)", "{a: b}", "&anchor *alias", "!tag", "%", "@a",
            "null", "~", "yes", "2026-11-30", "0x1F", "...", "? a", "a:", "|", "|\n  a", "\\", "\\<b\\>", "a\tb",
            "*Acalymma vittatum* (Fabricius)", "See [this](entry:potato-beetle).",
            "See [this](https://example.org/a_(b)).", "\ufffd", "a\u00a0b", "é", "\uD834\uDD1E");

    /**
     * A cell that holds words.
     *
     * @param row in which it stands, as it was exported
     * @param markdown whether there may be Markdown in it
     */
    private record Cell(String table, List<String> head, List<String> row, String column, boolean markdown) {
        TableEdits edits(String text) throws Exception {
            List<String> changed = new ArrayList<>(row);
            changed.set(head.indexOf(column), text);
            return ImportedTextsTest.edits(table, Stream.of(head, changed).map(line -> line.stream().map(cell -> "\""
                    + cell.replace("\"", "\"\"") + "\"").collect(Collectors.joining(","))).collect(
                            Collectors.joining("\n")));
        }

        @Override
        public String toString() {
            return table + ", " + column;
        }
    }

    static List<Cell> cells() throws Exception {
        List<Cell> cells = new ArrayList<>();
        for (TableKind kind : TableKind.values()) {
            List<List<String>> rows = rows(Tables.export(FOLDER, FuzzBase.content(), kind));
            for (TableKind.Column column : kind.columns()) {
                Shape shape = kind.field(column).shape();
                if (Set.of(Shape.Plain.STRING, Shape.Plain.PROSE, Shape.Plain.TEXT).contains(shape)) {
                    cells.add(new Cell(kind.word(), rows.get(0), rows.get(rows.size() - 1), column.name(),
                            shape != Shape.Plain.STRING));
                }
            }
        }
        List<List<String>> rows = rows(Tables.translations(FOLDER, FuzzBase.content(), FuzzBase.LANGUAGE).csv());
        for (String path : List.of("names/common", "monitoring/plants/how")) {
            cells.add(new Cell(TRANSLATIONS, rows.get(0), rows.stream().filter(row -> row.get(1).equals(path))
                    .findFirst().orElseThrow(), TranslationTable.TRANSLATION, true));
        }
        return cells;
    }

    private static List<List<String>> rows(String csv) throws Exception {
        return CsvReading.read(csv).rows().stream().map(CsvReading.Row::cells).toList();
    }

    @Test
    void everyColumnOfWordsIsAmongThem() throws Exception {
        assertEquals(Set.of("thresholds, crop", "thresholds, when", "thresholds, counted", "thresholds, monitoring",
                "thresholds, source", "thresholds, note", "materials, name", "materials, group", "materials, bee-note",
                "monitoring, how", "translations, translation"),
                cells().stream().map(Cell::toString).collect(Collectors.toSet()));
    }

    @ParameterizedTest
    @MethodSource("cells")
    void noTextBringsAFindingIn(Cell cell) throws Exception {
        List<String> before = findings(new TreeMap<>());
        for (String text : Stream.concat(BAD.keySet().stream(), ODD.stream()).toList()) {
            TableEdits edits = cell.edits(text);
            String at = cell + ": " + text + " is " + edits.refusals();
            assertEquals(before, findings(edits.files()), at);
            assertTrue(edits.refusals().stream().allMatch(refusal -> refusal.startsWith("row 2, column "
                    + cell.column() + ": expected ")), at);
            if (cell.markdown() && BAD.containsKey(text)) {
                assertTrue(edits.refusals().stream().anyMatch(refusal -> refusal.contains(BAD.get(text))
                        || refusal.endsWith("found several lines")), at);
                assertEquals(List.of(), edits.changes(), at);
            } else if (cell.markdown() && text.indexOf('\n') < 0) {
                assertEquals(List.of(), edits.refusals(), at);
                assertEquals(1, edits.files().size(), at);
            }
        }
    }

    @Property(tries = 200)
    void norDoSeveralSideBySide(@ForAll @Size(min = 2, max = 6) List<@IntRange(max = 9_999) Integer> picks,
            @ForAll @IntRange(max = 9_999) int place) throws Exception {
        List<String> pieces = Stream.concat(BAD.keySet().stream(), ODD.stream()).toList();
        String text = picks.stream().map(pick -> pieces.get(pick % pieces.size())).collect(Collectors.joining(" "));
        Cell cell = cells().get(place % cells().size());
        assertEquals(findings(new TreeMap<>()), findings(cell.edits(text).files()), cell + ": " + text);
    }

    /** A megabyte is what a file may hold; nobody can say which of two cells it was. */
    @Test
    void whatIsOfNoOneRowIsSaidWithFileAndLine() throws Exception {
        String half = "all limits are limits ".repeat(25_000);
        String why = "expected at most 1 MiB, found more; split the file";
        assertEquals(List.of("row 2, column bee-note: " + why),
                edits("materials", "id,bee-note\nspinosad," + half + half).refusals());
        TableEdits edits = edits("materials", "id,bee-note\nspinosad," + half + "\nbifenthrin," + half);
        assertEquals(List.of("active-ingredients.yaml with these changes, line 1: " + why), edits.refusals());
        assertEquals(Map.of(), edits.files());
    }

    /** What was wrong before does not keep anybody from changing something else, nor excuse the same elsewhere. */
    @Test
    void aFileThatHadAFindingMayKeepItWhereItIs(@TempDir Path folder) throws Exception {
        Path file = FolderCopy.of(FOLDER, folder).resolve("active-ingredients.yaml");
        Files.writeString(file, Files.readString(file).replace("Use in the evening", "Use <b>late in the evening"));
        ContentBase base = BaseLoader.load(folder).base().orElseThrow();
        assertEquals(List.of(), edits(folder, base, "id,bee-note\nbifenthrin,Never.").refusals());
        assertEquals(List.of(), edits(folder, base, "id,bee-note\nspinosad,Use late.").refusals());
        assertEquals(List.of("row 3, column bee-note: expected Markdown, found the HTML '<b>'; take the tag out; write "
                + "a '<' that is meant as a sign as '\\<'"),
                edits(folder, base, "id,bee-note\nspinosad,Use late.\nbifenthrin,Not <b>now.").refusals());
    }

    private static TableEdits edits(Path folder, ContentBase base, String csv) throws Exception {
        return Tables.edits(folder, base, TableKind.MATERIALS, csv.getBytes(StandardCharsets.UTF_8));
    }

    private static TableEdits edits(String table, String csv) throws Exception {
        byte[] bytes = csv.getBytes(StandardCharsets.UTF_8);
        return table.equals(TRANSLATIONS) ? Tables.edits(FOLDER, FuzzBase.content(), FuzzBase.LANGUAGE, bytes)
                : Tables.edits(FOLDER, FuzzBase.content(), Stream.of(TableKind.values())
                        .filter(kind -> kind.word().equals(table)).findFirst().orElseThrow(), bytes);
    }

    /** Of the whole base, as {@code check} loads it, with some files as they would be. */
    private static List<String> findings(SortedMap<String, byte[]> changed) {
        try {
            return BaseLoader.load(FOLDER, file -> FileReading.read(file, (same, bytes) -> FileReading.of(same,
                    changed.getOrDefault(FOLDER.relativize(file.file()).toString(), bytes)))).findings().stream()
                    .map(finding -> finding.rule() + " " + finding.message()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
