package org.fieldfold.scouting.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.PoissonDistribution;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;
import org.fieldfold.scouting.decision.Recount.Trend;
import org.fieldfold.scouting.sample.Confidence;
import org.fieldfold.scouting.sample.Interval;
import org.junit.jupiter.api.Test;

/**
 * Two counts of a flagged place. Exponential growth is arithmetic; the interval is checked by what it covers.
 */
class RecountTest {
    @Test
    void fourTimesAsManyInThreeDays() {
        Recount recount = new Recount(10, 40, 3);
        assertEquals(1.5, recount.doublingDays().getAsDouble(), 1e-12);
        assertEquals(3, recount.daysUntil(160).getAsDouble(), 1e-12);
        assertEquals(OptionalDouble.of(0), recount.daysUntil(40));
        assertEquals(Trend.RISING, recount.trend(Confidence.PERCENT_90));
        assertTrue(recount.soonest(160, Confidence.PERCENT_90).getAsDouble() < 3);
        assertTrue(recount.latest(160, Confidence.PERCENT_90).getAsDouble() > 3);
    }

    @Test
    void smallCountsSayLittle() {
        Recount small = new Recount(2, 4, 2);
        assertEquals(2, small.doublingDays().getAsDouble(), 1e-12);
        assertEquals(Trend.UNCLEAR, small.trend(Confidence.PERCENT_90));
        assertEquals(OptionalDouble.empty(), small.latest(20, Confidence.PERCENT_90));
        assertEquals(Trend.FALLING, new Recount(40, 10, 3).trend(Confidence.PERCENT_90));
        assertEquals(OptionalDouble.empty(), new Recount(40, 10, 3).doublingDays());
        assertEquals(OptionalDouble.empty(), new Recount(40, 10, 3).daysUntil(50));
    }

    @Test
    void fromNothingAndToNothing() {
        Recount from = new Recount(0, 8, 2);
        assertEquals(Trend.RISING, from.trend(Confidence.PERCENT_95));
        assertEquals(OptionalDouble.empty(), from.daysUntil(20));
        assertEquals(0, from.soonest(20, Confidence.PERCENT_95).getAsDouble());
        assertTrue(from.latest(20, Confidence.PERCENT_95).isPresent());
        Recount to = new Recount(8, 0, 2);
        assertEquals(Trend.FALLING, to.trend(Confidence.PERCENT_95));
        assertEquals(OptionalDouble.empty(), to.daysUntil(20));
        assertThrows(IllegalArgumentException.class, () -> new Recount(0, 0, 2));
        assertThrows(IllegalArgumentException.class, () -> new Recount(1, 2, 0));
    }

    @Test
    void theIntervalIsWilsonsForTheShareFoundTheSecondTime() {
        ConfidenceInterval share = new WilsonScoreInterval().createInterval(37, 25, 0.95);
        Interval growth = new Recount(12, 25, 3).growth(Confidence.PERCENT_95);
        double low = share.getLowerBound();
        double high = share.getUpperBound();
        assertEquals(Math.log(low / (1 - low)) / 3, growth.low(), 1e-9);
        assertEquals(Math.log(high / (1 - high)) / 3, growth.high(), 1e-9);
    }

    // 20,000 flagged places, Poisson counts from Apache Commons Math, fixed seed: about 95 of 100 intervals
    // must hold the true growth
    @Test
    void theIntervalHoldsTheTrueGrowthAsOftenAsItSays() {
        Well19937c random = new Well19937c(20270401);
        for (double mean : new double[] {5, 20}) {
            PoissonDistribution first = new PoissonDistribution(random, mean, 1e-12, 10_000);
            PoissonDistribution second = new PoissonDistribution(random, 1.8 * mean, 1e-12, 10_000);
            double truth = Math.log(1.8) / 3;
            int held = 0;
            int places = 20_000;
            for (int place = 0; place < places; place++) {
                int before = first.sample();
                int after = second.sample();
                held += before + after == 0
                        || new Recount(before, after, 3).growth(Confidence.PERCENT_95).holds(truth) ? 1 : 0;
            }
            assertEquals(0.95, (double) held / places, 0.015, "mean " + mean);
        }
    }
}
