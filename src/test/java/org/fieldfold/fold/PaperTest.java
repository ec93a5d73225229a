package org.fieldfold.fold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PaperTest {
    /** ISO 216 sizes in points to three decimals; ANSI/ASME Y14.1 A and B, and legal, are exact. */
    @ParameterizedTest
    @CsvSource({"letter, 612, 792, 215.9, 279.4", "legal, 612, 1008, 215.9, 355.6",
        "tabloid, 792, 1224, 279.4, 431.8", "a4, 595.276, 841.890, 210, 297",
        "a3, 841.890, 1190.551, 297, 420"})
    void sizes(String id, double width, double height, double widthMm, double heightMm) {
        Paper paper = Paper.named(id);
        assertEquals(id, paper.id());
        assertEquals(width, paper.width(), 0.0005);
        assertEquals(height, paper.height(), 0.0005);
        assertEquals(widthMm, paper.widthMm(), 1e-9);
        assertEquals(heightMm, paper.heightMm(), 1e-9);
    }

    @Test
    void saysWhichPapersThereAre() {
        String message = assertThrows(IllegalArgumentException.class, () -> Paper.named("a7")).getMessage();
        assertEquals("expected a paper (letter, legal, tabloid, a4, a3), found 'a7'", message);
        assertTrue(Paper.LEGAL.inInches());
    }
}
