package org.fieldfold.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FindingPrinterTest {
    private static Finding at(String text, String part) {
        int start = text.indexOf(part);
        return Finding.error(new Span(new SourceFile("content/pests/leek-moth.yaml", text), start, start
                + part.length()),
                "wrong-type", "expected a number, found 'two'", "write the number in figures");
    }

    private static String print(Finding finding) {
        return new FindingPrinter(false).print(finding);
    }

    @Test
    void showsThePlaceTheLineTheCaretAndTheHint() {
        assertEquals("""
                content/pests/leek-moth.yaml:2:10: error: expected a number, found 'two' [wrong-type]
                      value: two
                             ^~~
                  hint: write the number in figures
                """, print(at("thresholds:\n  value: two\n", "two")));
    }

    /**
     * Columns that a terminal takes, after Unicode Standard Annex 11: two for 虫, none for a combining accent.
     */
    @ParameterizedTest
    @CsvSource({"'a: two',3,3", "'\tb: two',4,3", "'虫: two',4,3", "'ｗ: two',4,3", "'e\u0301: two',3,3",
            "'🐛: two',4,3",
        "'é: two',3,3", "'한: two',4,3"})
    void theCaretStandsUnderWhatIsMeant(String line, int before, int length) {
        String caret = print(at(line, "two")).split("\n")[2];
        assertEquals(" ".repeat(4 + before) + "^" + "~".repeat(length - 1), caret, line);
    }

    @Test
    void theCaretIsAsWideAsWhatIsMeant() {
        assertEquals("       ^~~~", print(at("a: 虫虫", "虫虫")).split("\n")[2]);
    }

    @Test
    void aTabIsShownAsOneBlank() {
        assertEquals("     b: two", print(at("\tb: two", "two")).split("\n")[1]);
    }

    @Test
    void countsColumnsInCharactersAsReadersDo() {
        assertTrue(print(at("🐛: two", "two")).startsWith("content/pests/leek-moth.yaml:1:4: "),
                print(at("🐛: two", "two")));
    }

    @Test
    void marksOnlyTheFirstOfSeveralLines() {
        assertEquals("       ^~~", print(at("a: one\n  more\n", "one\n  more")).split("\n")[2]);
    }

    @Test
    void aPlaceBetweenCharactersHasOneCaret() {
        SourceFile file = new SourceFile("a.yaml", "key:\n");
        assertEquals("        ^", print(Finding.info(new Span(file, 4, 4), "r", "m", "h")).split("\n")[2]);
    }

    @Test
    void leavesOutLinesThatAreEmptyOrTooLong() {
        assertEquals(2, print(at("two" + "x".repeat(158), "two")).lines().count());
        assertEquals(4, print(at("two" + "x".repeat(157), "two")).lines().count());
        assertEquals(1, print(Finding.error(Span.startOf(new SourceFile("a.yaml", "")), "empty-file", "m",
                ""))
                .lines().count());
    }

    @Test
    void nothingInAFileReachesTheTerminalAsACommand() {
        String printed = print(Finding.error(Span.startOf(new SourceFile("a.yaml",
                "a: \u001b[31mred\u009b31m")), "r", "found '\u001b[2J'", "a\u0007b"));
        assertFalse(printed.chars().anyMatch(c -> c != '\n' && Character.isISOControl(c)), printed);
    }

    @Test
    void coloursOnlyWhenAsked() {
        assertTrue(new FindingPrinter(true).print(at("a: two", "two"))
                .contains("\u001b[1;31merror\u001b[0m"));
        assertFalse(print(at("a: two", "two")).contains("\u001b"));
    }

    @Test
    void countsInOneSentence() {
        Finding error = at("a: two", "two");
        Finding note = Finding.info(error.span(), "r", "m", "h");
        assertEquals("0 errors, 0 warnings, 0 notes", FindingPrinter.summary(List.of()));
        assertEquals("1 error, 0 warnings, 2 notes", FindingPrinter.summary(List.of(note, error, note)));
    }
}
