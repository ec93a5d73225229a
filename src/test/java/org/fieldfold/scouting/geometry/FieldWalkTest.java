package org.fieldfold.scouting.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
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

    @Test
    void aMarginLeavesAField() {
        assertThrows(IllegalArgumentException.class, () -> FieldWalk.of(Walk.V, FIELD, 20, 4));
        assertThrows(IllegalArgumentException.class, () -> FieldWalk.of(Walk.V, FIELD, 5, 0));
    }
}
