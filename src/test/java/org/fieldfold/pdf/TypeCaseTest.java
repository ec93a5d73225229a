package org.fieldfold.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.TypeMetrics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypeCaseTest {
    private static final TypeMetrics TYPE = new TypeCase();

    /** The runtime's own font engine as the second opinion. */
    @ParameterizedTest
    @CsvSource({"REGULAR, Regular", "BOLD, Bold", "ITALIC, Italic", "BOLD_ITALIC, BoldItalic"})
    void runsAsWideAsTheRuntimeSays(Face face, String file) throws IOException, FontFormatException {
        String text = "Count 50 stems; act at 1½ larvae, 20–30 % (Ñandú).";
        try (InputStream in = getClass().getResourceAsStream("/fonts/ttf/SourceSansPro/SourceSansPro-" + file
                + ".ttf")) {
            Font font = Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(1000f);
            double expected = font.getStringBounds(text, new FontRenderContext(null, true, true)).getWidth();
            assertEquals(expected, TYPE.width(face, text), expected / 2000);
        }
    }

    @Test
    void hasWhatGuidesNeed() {
        for (Face face : Face.values()) {
            "áéíóúñü¿¡çàèâêôœ×½¼¾≥≤–—’“”°µ·→←↑↓✓☐\u00a0".codePoints().filter(c -> c != '☐' && c != '✓')
                    .forEach(c -> assertTrue(TYPE.has(face, c), face + " U+" + Integer.toHexString(c)));
            assertTrue(TYPE.capHeight(face) > 600 && TYPE.capHeight(face) < 700);
        }
    }
}
