package org.fieldfold.scouting.sample;

import org.fieldfold.scouting.Expect;

/**
 * Lines around a threshold mean: outside them the mean is surely above or below it (Iwao 1975, Res. Popul.
 * Ecol. 16:281-288, citation from memory):
 * {@code T = n * m ± t * sqrt(n * ((alpha + 1) * m + (beta - 1) * m^2))}.
 *
 * @param threshold mean per unit, above 0
 * @param alpha intercept of mean crowding on the mean
 * @param beta slope of mean crowding on the mean
 * @param t quantile, above 0
 */
public record ThresholdLines(double threshold, double alpha, double beta, double t) {
    public ThresholdLines {
        Expect.above(0, threshold, "threshold mean");
        Expect.above(0, t, "t");
        Expect.above(0, (alpha + 1) * threshold + (beta - 1) * threshold * threshold,
                "variance at the threshold");
    }

    private double variance() {
        return (alpha + 1) * threshold + (beta - 1) * threshold * threshold;
    }

    /** Totals between which nothing is sure after {@code units}. */
    public Interval undecided(int units) {
        Expect.atLeast(1, units, "units looked at");
        double reach = t * Math.sqrt(units * variance());
        return new Interval(units * threshold - reach, units * threshold + reach);
    }

    /**
     * The most units ever needed, unrounded, for a half-width of {@code halfWidth} pests per unit at the
     * threshold.
     */
    public double mostUnits(double halfWidth) {
        Expect.above(0, halfWidth, "half-width");
        return t * t * variance() / (halfWidth * halfWidth);
    }
}
