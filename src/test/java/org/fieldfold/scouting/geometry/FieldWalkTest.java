package org.fieldfold.scouting.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.fieldfold.scouting.Walk;
import org.fieldfold.scouting.geometry.FieldWalk.Point;
import org.junit.jupiter.api.Test;

/** Walks are our own drawing of common practice; no source. */
class FieldWalkTest {
    private static final Field FIELD = new Field(60, 40);

    @Test
    void vTouchesBothNearCornersAndTheFarSide() {
        FieldWalk walk = FieldWalk.of(Walk.V, FIELD, 5, 4);
        assertEquals(List.of(List.of(new Point(5, 5), new Point(30, 35), new Point(55, 5))), walk.legs());
        // a quarter of the way from each end of each stroke
        assertEquals(List.of(new Point(11.25, 12.5), new Point(23.75, 27.5), new Point(36.25, 27.5),
                new Point(48.75, 12.5)), walk.stops());
    }

    @Test
    void crossHasTwoStretchesAndEdgeComesBack() {
        FieldWalk cross = FieldWalk.of(Walk.X, FIELD, 0, 3);
        assertEquals(2, cross.legs().size());
        assertEquals(List.of(new Point(15, 10), new Point(45, 30), new Point(30, 20)), cross.stops());
        List<Point> edge = FieldWalk.of(Walk.EDGE, FIELD, 5, 8).legs().get(0);
        assertEquals(edge.get(0), edge.get(edge.size() - 1));
        assertEquals(5, FieldWalk.of(Walk.W, FIELD, 5, 10).legs().get(0).size());
    }

    @Property
    void stopsAreAsManyAsAskedAndInsideTheMargin(@ForAll Walk walk,
            @ForAll @DoubleRange(min = 10, max = 500) double width,
            @ForAll @DoubleRange(min = 10, max = 500) double length,
                    @ForAll @DoubleRange(min = 0, max = 4) double margin,
            @ForAll @IntRange(min = 1, max = 40) int stops) {
        FieldWalk drawn = FieldWalk.of(walk, new Field(width, length), margin, stops);
        assertEquals(stops, drawn.stops().size());
        for (Point stop : drawn.stops()) {
            assertTrue(stop.across() >= margin - 1e-9 && stop.across() <= width - margin + 1e-9,
                    stop.toString());
            assertTrue(stop.along() >= margin - 1e-9 && stop.along() <= length - margin + 1e-9,
                    stop.toString());
        }
    }

    @Property
    void noStopIsVisitedTwice(@ForAll Walk walk, @ForAll @IntRange(min = 1, max = 40) int stops) {
        List<Point> points = FieldWalk.of(walk, FIELD, 3, stops).stops();
        assertEquals(stops, Set.copyOf(points).size(), points.toString());
    }

    @Test
    void aMarginLeavesAField() {
        assertThrows(IllegalArgumentException.class, () -> FieldWalk.of(Walk.V, FIELD, 20, 4));
        assertThrows(IllegalArgumentException.class, () -> FieldWalk.of(Walk.V, FIELD, 5, 0));
    }
}
