package org.fieldfold.scouting.sample;

import org.fieldfold.scouting.Expect;

/** How pests lie over the units, and so how counts scatter around their mean. */
public sealed interface Dispersion {
    /** At random: Poisson. */
    record Random() implements Dispersion {
        @Override
        public double variance(double mean) {
            return mean;
        }

        @Override
        public double infested(double mean) {
            return -StrictMath.expm1(-mean);
        }
    }

    /**
     * In clumps: negative binomial.
     *
     * @param k above 0; the smaller, the stronger the clumps
     */
    record Clumped(double k) implements Dispersion {
        public Clumped {
            Expect.above(0, k, "k of the negative binomial");
        }

        @Override
        public double variance(double mean) {
            return mean + mean * mean / k;
        }

        @Override
        public double infested(double mean) {
            return -StrictMath.expm1(-k * StrictMath.log1p(mean / k));
        }
    }

    /**
     * Taylor 1961, Nature 189:732-735: variance = a * mean^b.
     *
     * @param a above 0
     * @param b above 0; 1 with a = 1 is random
     */
    record PowerLaw(double a, double b) implements Dispersion {
        public PowerLaw {
            Expect.above(0, a, "a of the power law");
            Expect.above(0, b, "b of the power law");
        }

        @Override
        public double variance(double mean) {
            return a * StrictMath.pow(mean, b);
        }

        /** Wilson and Room 1983, Environ. Entomol. 12:50-54 (value from memory). */
        @Override
        public double infested(double mean) {
            double ratio = variance(mean) / mean;
            // ln(r) / (r - 1) tends to 1 where variance and mean are equal
            double pull = Math.abs(ratio - 1) < 1e-9 ? 1 : StrictMath.log(ratio) / (ratio - 1);
            return -StrictMath.expm1(-mean * pull);
        }
    }

    /** @param mean pests per unit, above 0 */
    double variance(double mean);

    /** Share of units with at least one pest, 0 to 1, at {@code mean} pests per unit, above 0. */
    double infested(double mean);

    /**
     * Units to look at for a mean, unrounded: {@code (z / D)^2 * variance / mean^2} (Karandinos 1976, Bull.
     * Entomol. Soc. Am. 22:417-421; citation from memory).
     *
     * @param mean pests per unit, above 0
     * @param precision half of the interval as a share of the mean, above 0
     * @param z quantile; 1 when the precision is meant as a standard error
     */
    default double unitsForMean(double mean, double precision, double z) {
        Expect.above(0, mean, "mean per unit");
        Expect.above(0, precision, "precision as a share of the mean");
        Expect.above(0, z, "z");
        return z * z * variance(mean) / (mean * mean * precision * precision);
    }

    /** The precision that {@code units} reach: half of the interval as a share of the mean. */
    default double precision(double mean, int units, double z) {
        Expect.above(0, mean, "mean per unit");
        Expect.atLeast(1, units, "units looked at");
        return z * Math.sqrt(variance(mean) / units) / mean;
    }
}
