package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.report.Csv;
import org.fieldfold.report.CsvReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables of the demo base, out and back in. */
class TablesTest {
    private static final Path CONTENT = Path.of("content");
    private static final ContentBase BASE = load();

    private static ContentBase load() {
        try {
            return BaseLoader.load(CONTENT).base().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static TableEdits edits(TableKind kind, String csv) throws Exception {
        return Tables.edits(CONTENT, BASE, kind, csv.getBytes(StandardCharsets.UTF_8));
    }

    private static List<List<String>> cells(String csv) throws Exception {
        return CsvReading.read(csv).rows().stream().map(row -> (List<String>) new ArrayList<>(row.cells()))
                .collect(Collectors.toCollection(ArrayList::new));
    }

    /** As another program writes it: every cell in quotation marks. */
    private static String write(List<List<String>> rows, String separator, String end) {
        return rows.stream().map(row -> row.stream().map(cell -> "\"" + cell.replace("\"", "\"\"") + "\"")
                .collect(Collectors.joining(separator)) + end).collect(Collectors.joining());
    }

    @ParameterizedTest
    @EnumSource(TableKind.class)
    void aTableThatComesBackAsItWentChangesNothing(TableKind kind) throws Exception {
        String csv = Tables.export(CONTENT, BASE, kind);
        assertTrue(csv.startsWith("\uFEFF"));
        TableEdits none = new TableEdits(List.of(), List.of(), new java.util.TreeMap<>());
        assertEquals(none, edits(kind, csv));
        for (String separator : List.of(",", ";", "\t")) {
            for (String end : List.of("\n", "\r\n", "\r")) {
                assertEquals(none, edits(kind, write(cells(csv), separator, end)),
                        "separator " + (int) separator.charAt(0));
            }
        }
    }

    @Test
    void theTablesHoldTheBase() throws Exception {
        List<List<String>> rows = cells(Tables.export(CONTENT, BASE, TableKind.THRESHOLDS));
        assertEquals(BASE.pests().values().stream().mapToInt(pest -> pest.value().thresholds().size()).sum()
                + 1, rows.size());
        assertTrue(rows.contains(List.of("onion-thrips", "first", "onion", "before the first treatment", "12",
                "48", "mean-per-unit", "1", "1", "", "thrips", "leaves", "cornell-onion-thrips", "")),
                rows.toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "none", textBlock = """
        value  | two        | expected a number, found 'two'
        value  | 3,5,1      | expected a number
        metric | per-leaf   | expected one of count-per-sample
        crop   | oniom      | expected one of apple
        source | nobody     | expected the id of a source of the base, found 'nobody'
        source | cornell-onion-thirps | expected the id of a source of the base, found 'cornell-onion-thirps'; did you \
        mean 'cornell-onion-thrips'?
        metric | ''         | expected a value, found none
        days   | 2027-01-01 | expected a whole number
        monitoring | bedx   | expected one of leaves, bed, found 'bedx'
        """)
    void whatIsNotUnderstoodIsNamedByRowAndColumn(String column, String value, String why) throws Exception {
        List<List<String>> rows = cells(Tables.export(CONTENT, BASE, TableKind.THRESHOLDS));
        int at = rows.get(0).indexOf(column);
        List<String> row = rows.stream().filter(one -> one.subList(0, 2)
                .equals(List.of("onion-thrips", "later"))).findFirst().orElseThrow();
        row.set(at, value);
        TableEdits edits = edits(TableKind.THRESHOLDS, write(rows, ";", "\n"));
        assertEquals(1, edits.refusals().size(), edits.toString());
        String refusal = edits.refusals().get(0);
        assertTrue(refusal.startsWith("row ") && refusal.contains(", column " + column + ": " + why), refusal);
        assertTrue(edits.files().isEmpty());
    }

    /** What the import takes, {@code check} takes too: inline HTML, and a link to an entry that is none. */
    @Test
    void aTextThatIsNoneInItsFileIsRefused() throws Exception {
        String table = "entry,id,how\nonion-thrips,leaves,%s\nonion-thrips,bed,Look closely.\n";
        TableEdits edits = edits(TableKind.MONITORING, table.formatted("Loo<document start>k closely."));
        assertEquals(List.of("row 2, column how: expected Markdown, found the HTML '<document start>'; take the tag "
                + "out; write a '<' that is meant as a sign as '\\<'"), edits.refusals());
        assertEquals(Map.of(), edits.files());
        assertEquals(List.of("row 2, column how: expected the id of an entry or chapter, found 'onion-thirps'; did you "
                + "mean 'onion-thrips'?"), edits(TableKind.MONITORING, table.formatted(
                        "Look as for [thrips](entry:onion-thirps).")).refusals());
        assertEquals(2, edits(TableKind.MONITORING, table.formatted("Loo\\<document start\\>k closely.")).changes()
                .size());
    }

    /** A spreadsheet may write a whole column its own way: that is said once, with the rows. */
    @Test
    void theSameMistakeInManyRowsIsSaidOnce() throws Exception {
        StringBuilder table = new StringBuilder("id,label-checked\n");
        BASE.materials().keySet().stream().limit(7).forEach(id -> table.append(id).append(",20.11.2027\n"));
        assertEquals(List.of("rows 2, 3, 4, 5, 6 and 2 more, column label-checked: expected a date as in 2026-11-30, "
                + "found '20.11.2027'; let the spreadsheet show the column as year-month-day"),
                edits(TableKind.MATERIALS, table.toString()).refusals());
    }

    /** A spreadsheet shows none of them. */
    @ParameterizedTest
    @ValueSource(strings = {"\u202e", "\u200b", "\u0007", "\u00ad", "\ufeff", "\u2028", "\ufffe"})
    void whatIsNotSeenDoesNotComeIn(String sign) throws Exception {
        String csv = "id,bee-note\nspinosad,Spray" + sign + " at dusk.\n";
        TableEdits edits = edits(TableKind.MATERIALS, csv);
        assertEquals(List.of("row 2, column bee-note: expected text, found "
                + UnseenCharacters.named(sign.codePointAt(0))), edits.refusals());
        assertEquals(Map.of(), edits.files());
        TableEdits without = edits(TableKind.MATERIALS, csv.replace(sign, ""));
        assertEquals(List.of(), without.refusals());
        assertEquals(1, without.files().size());
    }

    @Test
    void strangeTablesAreRefused() throws Exception {
        assertEquals(List.of("expected a first row of column names, found an empty table"),
                edits(TableKind.MATERIALS, "").refusals());
        assertEquals(List.of("row 1: expected the column 'id', found none"),
                edits(TableKind.MATERIALS, "name\nspinosad\n").refusals());
        assertTrue(edits(TableKind.MATERIALS, "id,rate\nspinosad,3\n").refusals().get(0)
                .startsWith("row 1, column 2: expected the columns id, name, "));
        String extra = edits(TableKind.MATERIALS, "id,rate,name,sold by\nspinosad,3,spinosad,x\n").refusals().get(0);
        assertTrue(extra.startsWith("row 1, column 2, 4: expected the columns id, ") && extra.endsWith(" and no other, "
                + "found 'rate', 'sold by'; take them out, if it is the right table"), extra);
        assertEquals(List.of("row 1, column 3: expected the column 'name' once, found it again"),
                edits(TableKind.MATERIALS, "id,name,name\nspinosad,spinosad,x\n").refusals());
        assertEquals(List.of("row 3, expected each of the materials once, found 'spinosad' again"),
                edits(TableKind.MATERIALS, "id,name\nspinosad,spinosad\nspinosad,spinosad\n").refusals());
        assertTrue(edits(TableKind.MATERIALS, "id,name\nspinosat,x\n").refusals().get(0)
                .startsWith("row 2, column id: expected one of the materials of the base, found 'spinosat'"));
        assertEquals(List.of("row 2, expected 2 cells, found 3"),
                edits(TableKind.MATERIALS, "id,name\nspinosad,spinosad,x\n").refusals());
        assertEquals(List.of("line 2: expected a closing quotation mark, found the end of the file"),
                edits(TableKind.MATERIALS, "id,name\n\"spinosad,x\n").refusals());
        assertEquals(List.of("expected UTF-8, found another encoding; save the table as 'CSV UTF-8'"),
                Tables.edits(CONTENT, BASE, TableKind.MATERIALS, new byte[] {'i', 'd', (byte) 0xE9})
                        .refusals());
    }

    @Test
    void aCellIsEditedWhereItStandsWithEveryOtherByteKept() throws Exception {
        TableEdits edits = edits(TableKind.MATERIALS, "id;phi-days from;label-checked;withdrawn\r\n"
                + "spinosad;3;2027-11-02;2028\r\n");
        assertEquals(List.of("active-ingredients.yaml: spinosad, phi-days from: 1 -> 3 (row 2)",
                "active-ingredients.yaml: spinosad, label-checked: 2026-11-10 -> 2027-11-02 (row 2)",
                "active-ingredients.yaml: spinosad, withdrawn: nothing -> 2028 (row 2)"), edits.changes());
        String before = Files.readString(CONTENT.resolve("active-ingredients.yaml"));
        int at = before.indexOf("  - id: spinosad\n");
        int end = before.indexOf("  - id: spinetoram\n");
        String record = before.substring(at, end);
        assertEquals(before.substring(0, at) + record.replace("phi-days: {from: 1,", "phi-days: {from: 3,")
                .replace("label-checked: 2026-11-10", "label-checked: 2027-11-02")
                .replaceFirst("(?s)\n$", "\n    withdrawn: 2028\n") + before.substring(end),
                new String(edits.files().get("active-ingredients.yaml"), StandardCharsets.UTF_8));
    }

    /** Formulas as spreadsheets know them (common practice: they begin with =, +, - or @). */
    @Test
    void whatWouldActIsMadeHarmlessAndComesBackAsItWas() throws Exception {
        for (String value : List.of("=1+1", "+cmd|' /C calc'!A0", "-2+3", "@SUM(A1)", "\t=1", "'quoted", "''",
                "'=1", "-5", "+3.5", "- a dash", "plain", "a=b")) {
            String cell = Csv.harmless(value);
            assertTrue(!cell.matches("(?s)[=+\\-@\\t\\r].*") || value.matches("[+-][0-9.]+"), cell);
            assertEquals(value, Csv.meant(cell));
        }
        assertEquals("'=1+1,\"'@a, b\"\r\n", Csv.write(List.of(List.of("=1+1", "@a, b"))));
        TableEdits edits = edits(TableKind.MATERIALS, "id,bee-note\nspinosad,'=1+1\n");
        assertTrue(new String(edits.files().get("active-ingredients.yaml"), StandardCharsets.UTF_8)
                .contains("    bee-note: =1+1\n") || new String(edits.files().get("active-ingredients.yaml"),
                        StandardCharsets.UTF_8).contains("    bee-note: \"=1+1\"\n"));
    }

    @Property(tries = 60)
    void anyNumberOfAnyTableChangesItsLineAndNoOther(@ForAll TableKind kind, @ForAll int pick,
            @ForAll int place) throws Exception {
        List<List<String>> rows = cells(Tables.export(CONTENT, BASE, kind));
        List<String> row = rows.get(1 + Math.floorMod(pick, rows.size() - 1));
        List<Integer> numbers = new ArrayList<>();
        for (int i = 2; i < row.size(); i++) {
            boolean word = List.of("group", "note", "counted").contains(rows.get(0).get(i));
            if (!word && row.get(i).matches("[1-9]?[0-9]")) {
                numbers.add(i);
            }
        }
        if (numbers.isEmpty()) {
            return;
        }
        int at = numbers.get(Math.floorMod(place, numbers.size()));
        row.set(at, row.get(at).equals("7") ? "8" : "7");
        TableEdits edits = edits(kind, write(rows, "\t", "\r\n"));
        assertEquals(List.of(), edits.refusals());
        assertEquals(1, edits.changes().size(), edits.changes().toString());
        String file = edits.files().firstKey();
        List<String> was = Arrays.asList(Files.readString(CONTENT.resolve(file)).split("\n", -1));
        List<String> is = Arrays.asList(new String(edits.files().get(file), StandardCharsets.UTF_8)
                .split("\n", -1));
        assertEquals(was.size(), is.size());
        int changed = 0;
        for (int i = 0; i < was.size(); i++) {
            changed += was.get(i).equals(is.get(i)) ? 0 : 1;
        }
        assertEquals(1, changed);
    }
}
