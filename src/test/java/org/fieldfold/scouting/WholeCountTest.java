package org.fieldfold.scouting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class WholeCountTest {
    @Test
    void whatWasComputedAsAHairBesideAWholeNumberIsThatNumber() {
        assertEquals(70, WholeCount.up(69.99999999999999));
        assertEquals(70, WholeCount.up(70.00000000000001));
        assertEquals(70, WholeCount.down(69.99999999999999));
        assertEquals(70, WholeCount.down(70.00000000000001));
        assertEquals(0, WholeCount.up(1e-15));
        // a million of them: a hair grows with the number
        assertEquals(1_000_000, WholeCount.up(1_000_000.0000001));
    }

    @Test
    void whatLiesBetweenIsRoundedToItsSide() {
        assertEquals(71, WholeCount.up(70.001));
        assertEquals(70, WholeCount.up(69.001));
        assertEquals(-1, WholeCount.down(-0.5));
        assertEquals(2, WholeCount.down(2.999));
    }

    @Test
    void whatNoCountHoldsIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> WholeCount.up(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> WholeCount.up(Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> WholeCount.down(-1e12));
    }
}
