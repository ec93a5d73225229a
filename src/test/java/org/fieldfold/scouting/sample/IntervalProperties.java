package org.fieldfold.scouting.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;

class IntervalProperties {
    private static final double Z95 = Confidence.PERCENT_95.z();

    @Property
    void wilsonIsThatOfCommonsMath(@ForAll @IntRange(min = 1, max = 1000) int units,
            @ForAll @IntRange(max = 1000) int some) {
        int found = some % (units + 1);
        ConfidenceInterval reference = new WilsonScoreInterval().createInterval(units, found, 0.95);
        Interval interval = Interval.wilson(found, units, Z95);
        assertEquals(reference.getLowerBound(), interval.low(), 1e-9);
        assertEquals(reference.getUpperBound(), interval.high(), 1e-9);
        assertTrue(interval.holds((double) found / units) && interval.low() >= 0 && interval.high() <= 1);
    }
}
