package org.fieldfold.scouting.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.fieldfold.scouting.geometry.Hoop.HalfEllipse;
import org.fieldfold.scouting.geometry.Hoop.Legged;
import org.fieldfold.scouting.geometry.Hoop.Segment;
import org.fieldfold.scouting.geometry.Hoop.Semicircle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bows are plain geometry; values worked out with Python. */
class HoopTest {
    @ParameterizedTest
    @CsvSource({"30, 47.1239", "36, 56.5487", "48, 75.3982", "72, 113.0973"})
    void semicircleIsAlsoTheOthersAtHalfTheWidth(double width, double arc) {
        assertEquals(arc, new Semicircle(width).arc(), 5.1e-5);
        assertEquals(arc, new Segment(width, width / 2).arc(), 5.1e-5);
        assertEquals(arc, new HalfEllipse(width, width / 2).arc(), 5.1e-5);
        assertEquals(arc, new Legged(width, 0).arc(), 5.1e-5);
    }

    @ParameterizedTest
    @CsvSource({"30, 18, 51.9434, 53.4395", "48, 18, 66.3105, 64.3501", "100, 40, 141.8083, 138.3219",
        "120, 50, 173.1448, 169.5161"})
    void otherBows(double width, double height, double ellipse, double segment) {
        assertEquals(ellipse, new HalfEllipse(width, height).arc(), 1e-4);
        assertEquals(segment, new Segment(width, height).arc(), 5.1e-5);
    }

    @Test
    void radii() {
        assertEquals(25, new Segment(48, 18).radius(), 1e-12);
        assertEquals(51.25, new Segment(100, 40).radius(), 1e-12);
        assertEquals(61, new Segment(120, 50).radius(), 1e-12);
    }

    @Test
    void tenFootStick() {
        assertEquals(76.394, Semicircle.ofStick(120, 0).width(), 5.1e-4);
        assertEquals(38.197, Semicircle.ofStick(120, 0).height(), 5.1e-4);
        // foodbankgrowers.org: about 6 in of each end in the soil
        assertEquals(68.755, Semicircle.ofStick(120, 6).width(), 5.1e-4);
        assertEquals(34.377, Semicircle.ofStick(120, 6).height(), 5.1e-4);
        assertEquals(22.301, Legged.ofStick(120, 48, 0).leg(), 5.1e-4);
        assertThrows(IllegalArgumentException.class, () -> Legged.ofStick(60, 48, 0));
        assertThrows(IllegalArgumentException.class, () -> Semicircle.ofStick(12, 6));
    }

    // stock and sheet are the bow and what is in the soil; foodbankgrowers.org holds down about 6 in of each
    // end
    @Test
    void tunnel() {
        LowTunnel tunnel = new LowTunnel(new Semicircle(36), 600, 48, 6, 6);
        assertEquals(14, tunnel.hoops());
        assertEquals(68.5487, tunnel.stock(), 5.1e-5);
        assertEquals(68.5487, tunnel.sheetWidth(), 5.1e-5);
        assertEquals(600 + 2 * (18 + 6), tunnel.sheetLength(), 1e-12);
        assertEquals(6, new LowTunnel(new Semicircle(1), 0.5, 0.1, 0, 0).hoops());
        assertThrows(IllegalArgumentException.class, () -> new LowTunnel(new Semicircle(36), 600, 0, 6, 6));
    }
}
