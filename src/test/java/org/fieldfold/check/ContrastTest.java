package org.fieldfold.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** WCAG 2.2, 'contrast ratio'; the figures were also computed by the npm package wcag-contrast 3.0.0. */
class ContrastTest {
    private static final double TO_THE_LAST_FIGURE = 0.0000051;

    @ParameterizedTest
    @CsvSource({"#777777,4.47809", "#767676,4.54222", "#757575,4.60752", "#595959,7.00473", "#949494,3.03347",
        "#000000,21", "#ff0000,3.99848", "#0000FF,8.59247", "#008000,5.13740", "#FFFF00,1.07384",
        "#00FF00,1.37219",
        "#D55E00,3.86718", "#0072B2,5.18545", "#009E73,3.42114", "#CC79A7,3.06103", "#1B5E20,7.86947"})
    void onWhite(String colour, double ratio) {
        assertEquals(ratio, Contrast.ratio(colour, "#ffffff"), TO_THE_LAST_FIGURE);
        assertEquals(ratio, Contrast.ratio("#FFFFFF", colour), TO_THE_LAST_FIGURE);
    }

    @ParameterizedTest
    @CsvSource({"#333333,#CCCCCC,7.86751", "#ff0000,#008000,1.28484", "#000000,#F0E442,15.88108",
        "#000000,#56B4E9,9.10083", "#000000,#E69F00,9.32385", "#123456,#123456,1"})
    void onOthers(String one, String other, double ratio) {
        assertEquals(ratio, Contrast.ratio(one, other), TO_THE_LAST_FIGURE);
    }

    /** The least greys of WCAG 2.2: 4.5:1 of success criterion 1.4.3 and 7:1 of 1.4.6 on white. */
    @Test
    void theGreysAtTheBordersOfTheLevels() {
        assertTrue(Contrast.ratio("#767676", "#ffffff") >= 4.5);
        assertFalse(Contrast.ratio("#777777", "#ffffff") >= 4.5);
        assertTrue(Contrast.ratio("#595959", "#ffffff") >= 7);
        assertFalse(Contrast.ratio("#5a5a5a", "#ffffff") >= 7);
    }

    @Test
    void aCopierSeesGrey() {
        assertEquals("#4d4d4d", Contrast.grey("#ff0000"));
        assertEquals("#969696", Contrast.grey("#00ff00"));
        assertEquals("#1c1c1c", Contrast.grey("#0000ff"));
        assertEquals("#ffffff", Contrast.grey("#ffffff"));
    }

    @Test
    void aColourIsSixFiguresBehindASign() {
        assertTrue(Contrast.isColour("#7a2A1a"));
        assertFalse(Contrast.isColour("#7a2"));
        assertFalse(Contrast.isColour("7a2a1a"));
        assertFalse(Contrast.isColour("#7a2a1g"));
    }
}
