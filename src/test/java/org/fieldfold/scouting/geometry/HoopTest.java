package org.fieldfold.scouting.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fieldfold.scouting.geometry.Hoop.HalfEllipse;
import org.fieldfold.scouting.geometry.Hoop.Legged;
import org.fieldfold.scouting.geometry.Hoop.Segment;
import org.fieldfold.scouting.geometry.Hoop.Semicircle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bows are plain geometry; values worked out with Python, and by walking along the bow in small steps. */
class HoopTest {
    private static final int STEPS = 20_000;

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

    @Property(tries = 100)
    void arcsAreAsLongAsTheBowInSmallSteps(@ForAll @DoubleRange(min = 20, max = 200) double width,
            @ForAll @DoubleRange(min = 0.2, max = 1.2) double steepness) {
        double height = width * steepness;
        double ellipse = 0;
        double segment = 0;
        Segment bow = new Segment(width, height);
        double radius = bow.radius();
        // half the angle that the bow spans, seen from the circle's centre
        double half = height <= width / 2 ? Math.asin(width / 2 / radius) : Math.PI
        - Math.asin(width / 2 / radius);
        for (int i = 0; i < STEPS; i++) {
            double t0 = Math.PI * i / STEPS;
            double t1 = Math.PI * (i + 1) / STEPS;
            ellipse += Math.hypot(width / 2 * (Math.cos(t0) - Math.cos(t1)),
                    height * (Math.sin(t1) - Math.sin(t0)));
            double a0 = half * (2.0 * i / STEPS - 1);
            double a1 = half * (2.0 * (i + 1) / STEPS - 1);
            segment += Math.hypot(radius * (Math.sin(a1) - Math.sin(a0)),
                    radius * (Math.cos(a1) - Math.cos(a0)));
        }
        assertEquals(1, new HalfEllipse(width, height).arc() / ellipse, 1e-4);
        assertEquals(1, bow.arc() / segment, 1e-6);
    }

    @Property
    void aHigherOrWiderBowIsLonger(@ForAll @DoubleRange(min = 20, max = 200) double width,
            @ForAll @DoubleRange(min = 5, max = 200) double height) {
        assertTrue(new HalfEllipse(width, height * 1.1).arc() > new HalfEllipse(width, height).arc());
        assertTrue(new Segment(width, height * 1.1).arc() > new Segment(width, height).arc());
        assertTrue(new HalfEllipse(width, height).arc() > width);
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
