package org.fieldfold.scouting;

import java.util.Optional;

/**
 * A threshold as it is used in the row: 'look at 50 plants (10 stops of 5); act at 10 or more with larvae'.
 *
 * @param lookAt units in the whole sample
 * @param stops places at which one stands still
 * @param each units looked at in each place
 * @param actAt the whole number at which to act, at least 1, rounded up from {@code exact}
 * @param countsUnitsWithPest true when a unit with pests counts once, however many are on it; false when
 *     every pest is counted
 * @param days over how many days a trap catch is added up; 0 where the count is made at once, or since the
 *     traps were set
 * @param exact the threshold for this sample before rounding
 */
public record CountCard(int lookAt, int stops, int each, int actAt, boolean countsUnitsWithPest, int days,
        double exact) {
    public CountCard {
        Expect.atLeast(1, actAt, "count to act at");
        if (countsUnitsWithPest) {
            Expect.within(1, lookAt, actAt, "number of units with pest to act at");
        }
    }

    /**
     * The card for a threshold and a sample. A threshold given for another number of units is scaled to the
     * sample in hand. A trap catch is added up over its own period, or from visit to visit where visits lie
     * further apart.
     *
     * @return empty for {@link Metric#NONE} and for what is not counted; {@link Metric#whyNoCard()} says why
     * @throws IllegalArgumentException when the count would be more than an int holds
     */
    public static Optional<CountCard> of(ThresholdFigure figure, SamplingPlan plan) {
        if (figure.metric().whyNoCard().isPresent()) {
            return Optional.empty();
        }
        int days = figure.metric() == Metric.TRAP_CATCH ? Math.max(figure.days(), plan.everyDays()) : 0;
        double exact = exact(figure, plan.size(), days);
        boolean unitsWithPest = figure.metric() == Metric.PERCENT_INFESTED;
        return Optional.of(new CountCard(plan.size(), plan.stops(), plan.each(),
                Math.max(1, WholeCount.up(exact)), unitsWithPest, days, exact));
    }

    private static double exact(ThresholdFigure figure, int size, int days) {
        return switch (figure.metric()) {
            case PERCENT_INFESTED -> figure.value() * size / 100;
            case COUNT_PER_SAMPLE, MEAN_PER_UNIT, CUMULATIVE_CATCH -> figure.value() * size / figure.per();
            case TRAP_CATCH -> figure.value() * size * days / ((double) figure.per() * figure.days());
            case ANY_PRESENT -> 1;
            case DEFOLIATION, DEGREE_DAYS, INTERVAL_TABLE, NONE ->
                throw new IllegalArgumentException("no count card for " + figure.metric());
        };
    }

    /** In plain words how rounding moved the number; empty when it did not. */
    public Optional<String> rounding() {
        if (Math.abs(actAt - exact) <= WholeCount.SLACK * actAt) {
            return Optional.empty();
        }
        return Optional.of("the threshold comes to " + Expect.plain(exact)
                + " for this sample; rounded up to " + actAt);
    }

    /**
     * How far above the true threshold the rounded number lies, as a share of it: 1 when 0.5 became 1.
     * A large share says that the sample is too small to show the threshold.
     */
    public double overshoot() {
        return Math.max(0, actAt / exact - 1);
    }
}
