package org.fieldfold.scouting.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fieldfold.scouting.geometry.Hoop.HalfEllipse;
import org.fieldfold.scouting.geometry.Hoop.Segment;

/** Bows are plain geometry; here by walking along the bow in small steps. */
class HoopProperties {
    private static final int STEPS = 20_000;

    @Property(tries = 100)
    void arcsAreAsLongAsTheBowInSmallSteps(@ForAll @DoubleRange(min = 20, max = 200) double width,
            @ForAll @DoubleRange(min = 0.2, max = 1.2) double steepness) {
        double height = width * steepness;
        double ellipse = 0;
        double segment = 0;
        Segment bow = new Segment(width, height);
        double radius = bow.radius();
        // half the angle that the bow spans, seen from the circle's centre
        double flat = Math.asin(width / 2 / radius);
        double half = height <= width / 2 ? flat : Math.PI - flat;
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
}
