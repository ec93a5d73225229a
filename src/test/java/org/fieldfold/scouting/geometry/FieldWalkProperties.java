package org.fieldfold.scouting.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.fieldfold.scouting.Walk;
import org.fieldfold.scouting.geometry.FieldWalk.Point;

/** Walks are our own drawing of common practice; no source. */
class FieldWalkProperties {
    private static final Field FIELD = new Field(60, 40);

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
        for (int i = 0; i < stops; i++) {
            for (int j = 0; j < i; j++) {
                assertTrue(points.get(i).distance(points.get(j)) > 0.5, points.toString());
            }
        }
    }
}
