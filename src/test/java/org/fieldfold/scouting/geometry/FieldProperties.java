package org.fieldfold.scouting.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class FieldProperties {
    @Property
    void borderAndShareAreInverse(@ForAll @DoubleRange(min = 1, max = 1000) double width,
            @ForAll @DoubleRange(min = 1, max = 1000) double length,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        Field field = new Field(width, length);
        double border = Math.min(field.borderFor(share), Math.min(width, length) / 2);
        assertEquals(share, field.borderShare(border), 1e-6);
    }

    @Property
    void aLongFieldPaysMoreBorder(@ForAll @DoubleRange(min = 1.01, max = 5) double stretch) {
        double square = new Field(100, 100).borderShare(3);
        assertTrue(new Field(100 * stretch, 100 / stretch).borderShare(3) > square);
    }
}
