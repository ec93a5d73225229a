package org.fieldfold.scouting;

/**
 * The figures of an action threshold.
 *
 * @param value in the metric's unit, above 0; percent as 0 to 100. Not used, and written 0, for
 *     {@link Metric#ANY_PRESENT}, {@link Metric#INTERVAL_TABLE} and {@link Metric#NONE}
 * @param per the number of units or traps that {@code value} refers to: 50 for '50 adults per 50 stems', 1
 *     for a mean per leaf or a catch per trap; 0 where the metric knows none
 * @param days the period of a trap catch in days; 0 where the metric knows none
 */
public record ThresholdFigure(Metric metric, double value, int per, int days) {
    public ThresholdFigure {
        if (metric.hasValue()) {
            Expect.above(0, value, "threshold");
        }
        if (metric.isPercent()) {
            Expect.within(0, 100, value, "threshold in percent");
        }
        Expect.atLeast(metric.isPerUnits() ? 1 : 0, per, "number of units that the threshold refers to");
        Expect.atLeast(metric == Metric.TRAP_CATCH ? 1 : 0, days, "trap period in days");
    }

    /** {@code percent} of the units infested. */
    public static ThresholdFigure percentInfested(double percent) {
        return new ThresholdFigure(Metric.PERCENT_INFESTED, percent, 0, 0);
    }

    /** {@code count} pests on {@code per} units together. */
    public static ThresholdFigure count(double count, int per) {
        return new ThresholdFigure(Metric.COUNT_PER_SAMPLE, count, per, 0);
    }

    /** {@code mean} pests on a unit, on average. */
    public static ThresholdFigure mean(double mean) {
        return new ThresholdFigure(Metric.MEAN_PER_UNIT, mean, 1, 0);
    }

    /** {@code caught} in one trap in {@code days} days. */
    public static ThresholdFigure trapCatch(double caught, int days) {
        return new ThresholdFigure(Metric.TRAP_CATCH, caught, 1, days);
    }

    /** {@code caught} in one trap since it was set. */
    public static ThresholdFigure cumulativeCatch(double caught) {
        return new ThresholdFigure(Metric.CUMULATIVE_CATCH, caught, 1, 0);
    }

    /** The first one found. */
    public static ThresholdFigure anyPresent() {
        return new ThresholdFigure(Metric.ANY_PRESENT, 0, 0, 0);
    }

    /** No threshold; the entry says why. */
    public static ThresholdFigure none() {
        return new ThresholdFigure(Metric.NONE, 0, 0, 0);
    }
}
