package org.fieldfold.scouting.sequential;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.OptionalInt;
import org.fieldfold.scouting.sequential.CountModel.NegativeBinomial;
import org.fieldfold.scouting.sequential.CountModel.Poisson;
import org.fieldfold.scouting.sequential.CountModel.Presence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wald's lines; where no page is named the values were worked out from his formulas with Python. */
class StopLinesTest {
    // NIST/SEMATECH e-Handbook of Statistical Methods, section 6.2.6 (value from memory): -0.939 + 0.0397 n
    // and 1.205 + 0.0397 n
    @Test
    void nistExample() {
        StopLines lines = StopLines.of(new Presence(), 0.01, 0.10, 0.05, 0.10);
        assertEquals(-0.93886, lines.lowIntercept(), 5.1e-6);
        assertEquals(1.20538, lines.highIntercept(), 5.1e-6);
        assertEquals(0.039747, lines.slope(), 5.1e-7);
    }

    @Test
    void nistExampleInWholeNumbers() {
        StopLines lines = StopLines.of(new Presence(), 0.01, 0.10, 0.05, 0.10);
        StopTable table = StopTable.of(new Presence(), lines, 1, 100, 1, AtMaximum.NEARER_LINE);
        assertEquals(OptionalInt.empty(), table.rows().get(0).stopHigh());
        for (StopRow row : table.rows().subList(1, 70)) {
            // at 20 units the line stands at 2.00033, and 2 is not enough
            int high = row.units() < 20 ? 2 : row.units() < 46 ? 3 : 4;
            assertEquals(OptionalInt.of(high), row.stopHigh(), "after " + row.units());
        }
        for (StopRow row : table.rows().subList(0, 80)) {
            OptionalInt low = row.units() < 24 ? OptionalInt.empty()
                    : OptionalInt.of(row.units() < 49 ? 0 : row.units() < 74 ? 1 : 2);
            assertEquals(low, row.stopLow(), "after " + row.units());
        }
    }

    // .10 and .25 with both chances .10: the denominator is ln 3, so the intercepts are whole
    @Test
    void wholeIntercepts() {
        StopLines lines = StopLines.of(new Presence(), 0.10, 0.25, 0.10, 0.10);
        assertEquals(-2, lines.lowIntercept(), 1e-12);
        assertEquals(2, lines.highIntercept(), 1e-12);
        assertEquals(Math.log(1.2) / Math.log(3), lines.slope(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({".10, .20, .1, .14524, 2.70951", ".15, .35, .1, .24047, 1.96961",
            ".05, .15, .05, .09193, 2.43375",
        ".01, .04, .05, .021715, 2.077842"})
    void presence(double low, double high, double chance, double slope, double intercept) {
        StopLines lines = StopLines.of(new Presence(), low, high, chance, chance);
        assertEquals(slope, lines.slope(), 5.1e-6);
        assertEquals(intercept, lines.highIntercept(), 5.1e-6);
        assertEquals(-intercept, lines.lowIntercept(), 5.1e-6);
    }

    @ParameterizedTest
    @CsvSource({"1, 2, 1.442695", ".5, 1, .721348"})
    void poisson(double low, double high, double slope) {
        StopLines lines = StopLines.of(new Poisson(), low, high, 0.1, 0.1);
        assertEquals(slope, lines.slope(), 5.1e-7);
        assertEquals(Math.log(9) / Math.log(2), lines.highIntercept(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"1, 2, 1, 1.409421, 7.63768", "1, 2, 2, 1.41902, 5.41902", "2, 3, 1.5, 2.44548, 14.25375"})
    void negativeBinomial(double low, double high, double k, double slope, double intercept) {
        StopLines lines = StopLines.of(new NegativeBinomial(k), low, high, 0.1, 0.1);
        assertEquals(slope, lines.slope(), 5.1e-6);
        assertEquals(intercept, lines.highIntercept(), 5.1e-6);
        assertEquals(-intercept, lines.lowIntercept(), 5.1e-6);
    }

    @Test
    void withoutClumpsItIsPoisson() {
        StopLines loose = StopLines.of(new NegativeBinomial(1e9), 1, 2, 0.1, 0.1);
        StopLines random = StopLines.of(new Poisson(), 1, 2, 0.1, 0.1);
        assertEquals(random.slope(), loose.slope(), 1e-6);
        assertEquals(random.highIntercept(), loose.highIntercept(), 1e-6);
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> StopLines.of(new Presence(), 0.2, 0.2, 0.1, 0.1));
        assertThrows(IllegalArgumentException.class, () -> StopLines.of(new Presence(), 0.2, 1, 0.1, 0.1));
        assertThrows(IllegalArgumentException.class, () -> StopLines.of(new Poisson(), 2, 1, 0.1, 0.1));
        assertThrows(IllegalArgumentException.class, () -> StopLines.of(new Poisson(), 1, 2, 0.6, 0.4));
        assertEquals("k of the negative binomial must be above 0, found 0",
                assertThrows(IllegalArgumentException.class, () -> new NegativeBinomial(0)).getMessage());
    }
}
