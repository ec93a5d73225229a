package org.fieldfold.fold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SchemeReaderTest {
    private static final String LETTER = """
            scheme letter
            title Letter fold
            sheet landscape
            columns 1 1 1
            rows 1
            fold x2 right over
            fold x1 left over
            """;

    @Test
    void readsTheShippedLetterFoldWhateverTheLineEnds() {
        assertEquals(FoldSchemes.named("letter"), FoldSchemes.read("letter.fold", LETTER));
        assertEquals(FoldSchemes.named("letter"), FoldSchemes.read("letter.fold", LETTER.replace("\n",
                "\r\n")));
        assertEquals(FoldSchemes.named("letter"), FoldSchemes.read("letter.fold", "# by hand\n"
                + LETTER.replace("over", "over   # a remark")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "fold x1 left over | fold x1 up over | letter.fold:7: expected left or right or top or bottom, found "
        + "'up'",
        "fold x1 left over | fold x1 left | letter.fold:7: expected a fold such as 'x2 right over', found "
        + "'x1 left'",
        "fold x1 left over | fold x1 top over | letter.fold:7: line x1 does not part top from the rest",
        "fold x1 left over | fold z1 left over | letter.fold:7: expected a line such as 'x1' (between "
        + "columns) or 'y1'"
            + " (between rows), found 'z1'",
        "fold x1 left over | bend x1 | letter.fold:7: expected scheme, title, sheet, columns, rows, print, "
        + "read, head,"
            + " trim, cut, fold or gather, found 'bend'",
        "fold x1 left over | cut y1 x1 x3 | letter.fold:7: expected a cut such as 'y1 from x1 to x3', found "
        + "'y1 x1 x3'",
        "fold x1 left over | cut y1 from y1 to y3 | letter.fold:7: expected a crossing line such as 'x1', "
        + "found 'y1'",
        "fold x1 left over | cut y1 from x3 to x1 | letter.fold:7: a cut runs from a lower line to a higher "
        + "one: 3 to"
            + " 1",
        "fold x1 left over | gather x1 row 0 valley | letter.fold:7: expected rows and columns counted from "
        + "1, found"
            + " 'x1 row 0 valley'",
        "sheet landscape | sheet wide | letter.fold:3: expected landscape or portrait, found 'wide'",
        "columns 1 1 1 | columns 1 one 1 | letter.fold:4: expected a whole number, found 'one'",
        "rows 1 | columns 1 | letter.fold:5: expected 'columns' once, found it a second time",
        "rows 1 | head up | letter.fold:5: expected top or right or bottom or left, found 'up'",
        "title Letter fold | title | letter.fold:2: expected something after 'title', found nothing",
    })
    void saysWhereWhatWasExpectedAndWhatWasFound(String line, String instead, String message) {
        FoldException e = assertThrows(FoldException.class,
                () -> FoldSchemes.read("letter.fold", LETTER.replace(line, instead)));
        assertEquals(message, e.getMessage());
    }

    @Test
    void aFileCutOffAnywhereIsReadOrRefusedButNeverFails() throws IOException {
        for (FoldScheme scheme : FoldSchemes.all()) {
            String text = shipped(scheme.id());
            for (int length = 0; length < text.length(); length++) {
                String part = text.substring(0, length);
                try {
                    Imposition.of(FoldSchemes.read("cut.fold", part), Paper.A4, FlipEdge.LONG);
                } catch (FoldException e) {
                    assertTrue(!e.getMessage().isBlank());
                }
            }
        }
    }

    @Test
    void shipsEverySchemeThatAnOfficeUses() {
        assertEquals(List.of("accordion-3", "accordion-4", "accordion-5", "accordion-6", "booklet-8",
                "double-gate", "double-parallel", "french", "gate", "half", "letter", "map"),
                FoldSchemes.all().stream().map(FoldScheme::id).toList());
        assertEquals("expected a fold scheme (accordion-3, accordion-4, accordion-5, accordion-6, booklet-8,"
                + " double-gate, double-parallel, french, gate, half, letter, map), found 'zigzag'",
                assertThrows(FoldException.class, () -> FoldSchemes.named("zigzag")).getMessage());
    }

    private static String shipped(String id) throws IOException {
        try (InputStream in = FoldSchemes.class.getResourceAsStream("schemes/" + id + ".fold")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
