package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.report.Csv;
import org.fieldfold.report.CsvReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The Spanish texts of the demo base as a table, out and back in. */
class TranslationTablesTest {
    private static final Path CONTENT = Path.of("content");
    private static final ContentBase BASE = load(CONTENT);
    private static final TableEdits NONE = new TableEdits(List.of(), List.of(), new TreeMap<>());
    private static final String THRIPS = "es/pests/onion-thrips.yaml";
    private static final String HEAD = "file,path,base text,translation,state\n";

    private static ContentBase load(Path content) {
        try {
            return BaseLoader.load(content).base().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String export() throws Exception {
        return Tables.translations(CONTENT, BASE, "es").csv();
    }

    private static TableEdits edits(String csv) throws Exception {
        return Tables.edits(CONTENT, BASE, "es", csv.getBytes(StandardCharsets.UTF_8));
    }

    private static List<List<String>> cells(String csv) throws Exception {
        return CsvReading.read(csv).rows().stream().map(row -> (List<String>) new ArrayList<>(row.cells()))
                .collect(Collectors.toCollection(ArrayList::new));
    }

    /** As another program writes it: every cell in quotation marks. */
    private static String write(List<List<String>> rows, String separator, String end) {
        return rows.stream().map(row -> row.stream().map(cell -> "\"" + cell.replace("\n", end)
                .replace("\"", "\"\"") + "\"").collect(Collectors.joining(separator)) + end)
                .collect(Collectors.joining());
    }

    @Test
    void theWholeTableComesBackAsItWentAndChangesNothing() throws Exception {
        String csv = export();
        assertTrue(csv.startsWith("\uFEFF" + HEAD.replace("\n", "\r\n")));
        assertTrue(cells(csv).size() > 1000, cells(csv).size() + " rows");
        assertTrue(cells(csv).contains(List.of("pests/onion-thrips", "names/common", "onion thrips",
                "trips de la cebolla", "current")));
        assertEquals(NONE, edits(csv));
        assertEquals(NONE, edits(write(cells(csv), ";", "\r\n")));
    }

    @Test
    void aTranslationIsEditedWhereItStandsWithEveryOtherByteKept() throws Exception {
        TableEdits edits = edits(HEAD + "pests/onion-thrips,names/common,onion thrips,trips de cebolla,current\n");
        assertEquals(List.of(THRIPS + ": names/common: trips de la cebolla -> trips de cebolla (row 2)"),
                edits.changes());
        assertEquals(Files.readString(CONTENT.resolve(THRIPS)).replaceFirst("text: trips de la cebolla\n",
                "text: trips de cebolla\n"),
                new String(edits.files().get(THRIPS), StandardCharsets.UTF_8));
    }

    @Test
    void whatWouldActAsAFormulaComesBackAsText() throws Exception {
        TableEdits edits = edits(HEAD + "pests/onion-thrips,names/common,onion thrips,'=1+1,current\n");
        assertTrue(new String(edits.files().get(THRIPS), StandardCharsets.UTF_8)
                .contains("  of: 05c5c3d5\n  text: =1+1\n"), edits.toString());
    }

    @Test
    void whatIsNotUnderstoodIsNamedByRowAndColumn() throws Exception {
        String row = "pests/onion-thrips,names/common,onion thrips,";
        assertEquals("row 2, column state: expected 'current', found 'due'",
                refusal(row + "trips de la cebolla,due"));
        assertEquals("row 2, column translation: expected a translation, found none; one is taken out in its "
                + "file", refusal(row + ",current"));
        assertEquals("row 2, column translation: expected words on one line, found several lines",
                refusal(row + "\"trips\nde cebolla\",current"));
        assertEquals("row 2, column base text: expected the text as it is now, “onion thrips”, found another; "
                + "export the table again", refusal("pests/onion-thrips,names/common,leek thrips,trips,current"));
        assertEquals("row 2, column path: expected a text of the base that has its place in language es, found "
                + "'pests/onion-thrips: names/comon'; export the table again",
                refusal("pests/onion-thrips,names/comon,onion thrips,trips,current"));
        assertEquals("row 2, expected 5 cells, found 4", refusal(row + "trips"));
        for (String sign : List.of("\u202e", "\u200b", "\u0007", "\u00ad", "\u2028", "\ufffe")) {
            assertEquals("row 2, column translation: expected text, found " + UnseenCharacters.named(
                    sign.codePointAt(0)), refusal(row + "trips" + sign + " de la cebolla,current"));
        }
        String mend = "; take the tag out; write a '<' that is meant as a sign as '\\<'";
        assertEquals(List.of("row 2, column translation: expected Markdown, found the HTML '<b>'" + mend,
                "row 2, column translation: expected Markdown, found the HTML '</b>'" + mend),
                edits(HEAD + row + "\"a <b>word</b>\",current\n").refusals());
        assertEquals("row 3, expected each text once, found 'pests/onion-thrips: names/common' again",
                refusal(row + "trips de la cebolla,current\n" + row + "trips,current"));
        assertEquals(List.of("row 1, column 1: expected the columns file, path, base text, translation, "
                + "state and no other, found 'id'; take it out", "row 1: expected the column 'file', found none"),
                edits("id,path,base text,translation\n").refusals());
        assertTrue(assertThrows(EditRefused.class, () -> Tables.translations(CONTENT, BASE, "fr")).getMessage()
                .contains("one of es, found 'fr'; 'fieldfold draft translation fr' begins one"));
    }

    /** The base says something else now: the translation is due, until somebody says that it still holds. */
    @Test
    void whatIsDueIsConfirmedByItsState(@TempDir Path folder) throws Exception {
        for (String file : List.of("edition.yaml", "pests/onion-thrips.yaml", THRIPS)) {
            Files.createDirectories(folder.resolve(file).getParent());
            Files.writeString(folder.resolve(file), Files.readString(CONTENT.resolve(file))
                    .replace("common: onion thrips", "common: thrips of onions"));
        }
        ContentBase base = load(folder);
        List<String> due = cells(Tables.translations(folder, base, "es").csv()).stream()
                .filter(row -> row.get(1).equals("names/common")).findFirst().orElseThrow();
        assertEquals(List.of("pests/onion-thrips", "names/common", "thrips of onions", "trips de la cebolla",
                "due"), due);
        due.set(4, "current");
        TableEdits edits = Tables.edits(folder, base, "es", (HEAD + String.join(",", due) + "\n")
                .getBytes(StandardCharsets.UTF_8));
        assertEquals(List.of(THRIPS + ": names/common: looked at, current (row 2)"), edits.changes());
        String after = new String(edits.files().get(THRIPS), StandardCharsets.UTF_8);
        assertEquals(Files.readString(folder.resolve(THRIPS)), after.replaceFirst("of: [0-9a-f]{8}\n",
                "of: 05c5c3d5\n"));
        assertTrue(!after.contains("of: 05c5c3d5"), "the hash of the new text");
    }

    private static String refusal(String rows) throws Exception {
        TableEdits edits = edits(HEAD + rows + "\n");
        assertTrue(edits.files().isEmpty());
        assertEquals(1, edits.refusals().size(), edits.toString());
        return edits.refusals().get(0);
    }

    /** Any text set to any words: read again, the file says them under the hash of the base, and no more. */
    @Property(tries = 40)
    void anyTextOfAnyFileIsChangedAndNoOther(@ForAll int pick, @ForAll int word) throws Exception {
        TranslationTable table = new TranslationTable(CONTENT, BASE, "es");
        TranslationTable.Row row = table.rows().get(Math.floorMod(pick, table.rows().size()));
        if (row.borrowed()) {
            return;
        }
        List<String> words = List.of("-5 %", "a: b", "x #y", "yes", "¿cuándo?", "'comillas'", "\"así\"", "a, b; c",
                "=SUM(A1)", "3", "ñandú – más", "@a", "null");
        String said = words.get(Math.floorMod(word, words.size()));
        TableEdits edits = edits(write(List.of(TranslationTable.COLUMNS, List.of(row.file(),
                row.pair().text().path(), row.pair().text().words(), Csv.harmless(said),
                row.state())), ",", "\n"));
        assertEquals(List.of(), edits.refusals());
        String file = "es/" + row.file() + ".yaml";
        InPlace was = InPlace.of(file, Files.readAllBytes(CONTENT.resolve(file)));
        InPlace is = InPlace.of(file, edits.files().get(file));
        assertEquals(said, is.value(row.place(), "text").orElseThrow().strip());
        assertEquals(row.pair().text().hash(), is.value(row.place(), "of").orElseThrow());
        for (TranslationTable.Row other : table.rows()) {
            if (other.file().equals(row.file()) && !other.place().equals(row.place())) {
                assertEquals(was.value(other.place(), "text"), is.value(other.place(), "text"));
            }
        }
        List<String> comments = comments(Files.readString(CONTENT.resolve(file)));
        // a heading of a chapter looks like a comment, and goes with the text
        comments.removeIf(line -> row.translation().lines().anyMatch(line.strip()::equals));
        assertEquals(comments, comments(new String(edits.files().get(file), StandardCharsets.UTF_8)));
    }

    private static List<String> comments(String text) {
        return text.lines().filter(line -> line.strip().startsWith("#"))
                .collect(Collectors.toCollection(ArrayList::new));
    }
}
