package org.fieldfold.scouting.sequential;

import org.fieldfold.scouting.Expect;

/** How the counts of single units scatter around the density of the field. */
public sealed interface CountModel {
    /** A unit counts once, with the pest or without it; the density is the share of units with it, 0 to 1. */
    record Presence() implements CountModel {
        @Override
        public LogRatio logRatio(double low, double high) {
            Expect.between(0, 1, low, "lower share of units with the pest");
            Expect.between(low, 1, high, "upper share of units with the pest");
            return new LogRatio(StrictMath.log(high / low) - StrictMath.log((1 - high) / (1 - low)),
                    StrictMath.log((1 - low) / (1 - high)));
        }

        @Override
        public boolean isPossible(int total, int units) {
            return total <= units;
        }

        @Override
        public double variance(double density) {
            return density * (1 - density);
        }

        @Override
        public double[] totals(int units, double density, int cap) {
            return Totals.binomial(units, density, cap);
        }
    }

    /** Pests lie at random; the density is their mean per unit. */
    record Poisson() implements CountModel {
        @Override
        public LogRatio logRatio(double low, double high) {
            Expect.above(0, low, "lower mean per unit");
            Expect.above(low, high, "upper mean per unit");
            return new LogRatio(StrictMath.log(high / low), high - low);
        }

        @Override
        public double variance(double density) {
            return density;
        }

        @Override
        public double[] totals(int units, double density, int cap) {
            return Totals.poisson(units * density, cap);
        }
    }

    /**
     * Pests lie in clumps; the density is their mean per unit.
     *
     * @param k common to both densities, above 0; the smaller, the stronger the clumps
     */
    record NegativeBinomial(double k) implements CountModel {
        public NegativeBinomial {
            Expect.above(0, k, "k of the negative binomial");
        }

        @Override
        public LogRatio logRatio(double low, double high) {
            Expect.above(0, low, "lower mean per unit");
            Expect.above(low, high, "upper mean per unit");
            return new LogRatio(StrictMath.log(high * (low + k) / (low * (high + k))),
                    k * StrictMath.log((high + k) / (low + k)));
        }

        @Override
        public double variance(double density) {
            return density + density * density / k;
        }

        @Override
        public double[] totals(int units, double density, int cap) {
            return Totals.negativeBinomial(units * density, units * k, cap);
        }
    }

    /**
     * The logarithm of how much likelier a total T on n units is at the high density:
     * {@code T * perPest - n * perUnit}.
     */
    record LogRatio(double perPest, double perUnit) {
    }

    /**
     * @throws IllegalArgumentException unless both densities are possible and {@code low} is the lower one
     */
    LogRatio logRatio(double low, double high);

    /** Whether so many can be counted on so many units at all. */
    default boolean isPossible(int total, int units) {
        return true;
    }

    /** Variance of the count of one unit. */
    double variance(double density);

    /**
     * How likely each total on {@code units} units is: place i for a total of i, the last place for
     * {@code cap} or more.
     *
     * @param cap at least 1
     */
    double[] totals(int units, double density, int cap);
}
