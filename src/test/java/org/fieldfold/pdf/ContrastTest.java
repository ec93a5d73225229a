package org.fieldfold.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.fieldfold.typeset.Mark.Ink;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ratios by the formula of WCAG 2.2; the same numbers come from the npm package wcag-contrast 3.0.0. */
class ContrastTest {
    @ParameterizedTest
    @CsvSource({"#777777, #ffffff, 4.47809", "#767676, #ffffff, 4.54222", "#595959, #FFFFFF, 7.00473",
            "#949494, #ffffff, 3.03347", "#000000, #ffffff, 21", "#ffffff, #000000, 21",
                    "#FF0000, #ffffff, 3.99848",
            "#0000FF, #ffffff, 8.59247", "#008000, #ffffff, 5.13740", "#FFFF00, #ffffff, 1.07384",
            "#D55E00, #ffffff, 3.86718", "#0072B2, #ffffff, 5.18545", "#1B5E20, #ffffff, 7.86947",
            "#333333, #CCCCCC, 7.86751", "#FF0000, #008000, 1.28484", "#F0E442, #000000, 15.88108",
            "#56B4E9, #000000, 9.10083"})
    void ratios(String one, String other, double ratio) {
        assertEquals(ratio, Contrast.between(new Ink(one), new Ink(other)), 0.000005);
    }

    @Test
    void anInkIsSixHexadecimalDigits() {
        assertEquals("expected an ink as #rrggbb, found 'red'", assertThrows(IllegalArgumentException.class,
                () -> Contrast.between(new Ink("red"), Ink.WHITE)).getMessage());
    }
}
