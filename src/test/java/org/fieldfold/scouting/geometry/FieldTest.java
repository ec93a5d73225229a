package org.fieldfold.scouting.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.api.Test;

class FieldTest {
    private static final double ACRE_SIDE = Math.sqrt(43_560);

    // worked out from the formula with Python; an acre square is 208.7103 ft a side
    @ParameterizedTest
    @CsvSource({"0, 0, 3, 5.667", "0, 0, 5, 9.353", "300, 145.2, 6, 11.934", "660, 66, 3, 9.917",
        "100, 100, 2, 7.84", "100, 100, 5, 19.0"})
    void borderShare(double width, double length, double border, double percent) {
        Field field = width == 0 ? new Field(ACRE_SIDE, ACRE_SIDE) : new Field(width, length);
        assertEquals(percent, 100 * field.borderShare(border), 5.1e-4);
    }

    @ParameterizedTest
    @CsvSource({"5, 2.6423", "8, 4.2612", "10, 5.3552", "15, 8.1445"})
    void borderForAShareOfAnAcre(double percent, double feet) {
        assertEquals(feet, new Field(ACRE_SIDE, ACRE_SIDE).borderFor(percent / 100), 5.1e-5);
    }

    // Washington State University: one codling-moth trap per 2.5 acres
    @ParameterizedTest
    @CsvSource({"1, 1", "2.5, 1", "2.6, 2", "10, 4"})
    void trapsForAnArea(double acres, int traps) {
        assertEquals(traps, Density.oneFor(2.5).on(acres));
    }

    // extension.udel.edu 2003, sweet corn: 10 places up to 50 acres, one more per extra 10 acres
    @ParameterizedTest
    @CsvSource({"5, 10", "50, 10", "51, 11", "60, 11", "61, 12", "100, 15"})
    void stopsForAnArea(double acres, int stops) {
        assertEquals(stops, new Density(10, 50, 10).on(acres));
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Field(0, 10));
        assertThrows(IllegalArgumentException.class, () -> new Field(10, 10).borderShare(5.1));
        assertThrows(IllegalArgumentException.class, () -> Density.oneFor(0));
        assertThrows(IllegalArgumentException.class, () -> Density.oneFor(2.5).on(0));
    }
}
