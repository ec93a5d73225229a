package org.fieldfold.scouting.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.fieldfold.scouting.SamplingPlan;
import org.fieldfold.scouting.ThresholdFigure;
import org.fieldfold.scouting.Walk;
import org.junit.jupiter.api.Test;

class SampleSupportTest {
    private static SampleSupport of(ThresholdFigure figure, int size, Dispersion dispersion) {
        return SampleSupport.of(figure, new SamplingPlan("plants", size, Walk.V, 1, size, 7), dispersion,
                Confidence.PERCENT_95).orElseThrow();
    }

    // 4 of 30 clusters is the case of IntervalTest; 20 % needs 64 units for a quarter, as in SampleSizeTest
    @Test
    void aShareAtTheThreshold() {
        SampleSupport clusters = of(ThresholdFigure.percentInfested(400.0 / 30), 30, new Dispersion.Random());
        assertEquals(5.3097, clusters.likely().low(), 5.1e-5);
        assertEquals(29.6813, clusters.likely().high(), 5.1e-5);
        SampleSupport plants = of(ThresholdFigure.percentInfested(20), 64, new Dispersion.Random());
        assertEquals(64, plants.unitsForQuarter());
        assertEquals(0.25, plants.precision(), 1e-12);
        assertTrue(plants.canShow());
        assertEquals(1, of(ThresholdFigure.percentInfested(100), 10, new Dispersion.Random())
                .unitsForQuarter());
    }

    // a = 2, b = 1.5 at a mean of 1 needs 32 units, as in SampleSizeTest
    @Test
    void aMeanAtTheThreshold() {
        SampleSupport leaves = of(ThresholdFigure.mean(1), 32, new Dispersion.PowerLaw(2, 1.5));
        assertEquals(0.25, leaves.precision(), 1e-12);
        assertEquals(32, leaves.unitsForQuarter());
        assertEquals(1 - 1.959964 * 0.25, leaves.likely().low(), 1e-6);
        assertEquals(leaves, of(ThresholdFigure.count(50, 50), 32, new Dispersion.PowerLaw(2, 1.5)));
    }

    @Test
    void aSampleTooSmallToShowTheThreshold() {
        assertFalse(of(ThresholdFigure.percentInfested(2), 25, new Dispersion.Random()).canShow());
        assertTrue(of(ThresholdFigure.percentInfested(4), 25, new Dispersion.Random()).canShow());
        assertEquals(Optional.empty(), SampleSupport.of(ThresholdFigure.none(),
                new SamplingPlan("plants", 25, Walk.V, 5, 5, 7), new Dispersion.Random(),
                Confidence.PERCENT_95));
    }
}
