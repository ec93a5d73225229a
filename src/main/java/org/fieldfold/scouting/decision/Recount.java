package org.fieldfold.scouting.decision;

import java.util.OptionalDouble;
import org.fieldfold.scouting.Expect;
import org.fieldfold.scouting.sample.Confidence;
import org.fieldfold.scouting.sample.Interval;

/**
 * A flagged place counted twice. Both counts are of the same units; each is taken to scatter like a Poisson
 * count, so that of all pests counted the share found the second time says how they grew, with Wilson's
 * interval around it.
 *
 * @param first pests found when it was flagged, 0 or more
 * @param second pests found now, 0 or more; not both 0
 * @param days between the two, above 0
 */
public record Recount(int first, int second, double days) {
    public Recount {
        Expect.atLeast(0, first, "first count");
        Expect.atLeast(0, second, "second count");
        Expect.above(0, days, "days between the counts");
        if (first == 0 && second == 0) {
            throw new IllegalArgumentException("two counts of nothing say nothing about growth");
        }
    }

    /** Which way it goes, as far as the counts can tell. */
    public enum Trend {
        RISING, FALLING, UNCLEAR
    }

    /**
     * Growth a day, as an exponent: 0.1 is about 10 % more every day. Infinite when one of the counts is 0.
     */
    public double growth() {
        return StrictMath.log((double) second / first) / days;
    }

    /** Where the growth lies; an end is infinite where the counts set no limit. */
    public Interval growth(Confidence confidence) {
        Interval share = Interval.wilson(second, (double) first + second, confidence.z());
        return new Interval(StrictMath.log(share.low() / (1 - share.low())) / days,
                StrictMath.log(share.high() / (1 - share.high())) / days);
    }

    /** Rising or falling only when the whole interval says so. */
    public Trend trend(Confidence confidence) {
        Interval growth = growth(confidence);
        return growth.low() > 0 ? Trend.RISING : growth.high() < 0 ? Trend.FALLING : Trend.UNCLEAR;
    }

    /** Days in which the number doubles; empty when it does not grow, or grew from nothing. */
    public OptionalDouble doublingDays() {
        return growth() > 0 && Double.isFinite(growth()) ? OptionalDouble.of(StrictMath.log(2) / growth())
                : OptionalDouble.empty();
    }

    /**
     * Days from now until the count stands at {@code threshold}, if it goes on as it did; 0 when it is there.
     *
     * @param threshold count on the same units, above 0
     * @return empty when it does not grow, or grew from nothing
     */
    public OptionalDouble daysUntil(double threshold) {
        return Double.isInfinite(growth()) && second < threshold ? OptionalDouble.empty()
                : daysAt(growth(), threshold);
    }

    /** The soonest that the interval allows; empty when even its fastest growth does not get there. */
    public OptionalDouble soonest(double threshold, Confidence confidence) {
        return daysAt(growth(confidence).high(), threshold);
    }

    /** The latest that the interval allows; empty when its slowest growth never gets there. */
    public OptionalDouble latest(double threshold, Confidence confidence) {
        return daysAt(growth(confidence).low(), threshold);
    }

    private OptionalDouble daysAt(double growth, double threshold) {
        Expect.above(0, threshold, "threshold");
        if (second >= threshold) {
            return OptionalDouble.of(0);
        }
        return second == 0 || growth <= 0 ? OptionalDouble.empty()
                : OptionalDouble.of(StrictMath.log(threshold / second) / growth);
    }
}
