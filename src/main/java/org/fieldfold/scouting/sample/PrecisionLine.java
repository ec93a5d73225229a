package org.fieldfold.scouting.sample;

import org.fieldfold.scouting.Expect;

/**
 * Stop lines for a wanted precision: once the running total reaches the line, the mean is known well enough.
 */
public sealed interface PrecisionLine {
    /**
     * Green 1970, Res. Popul. Ecol. 12:249-251 (citation from memory):
     * {@code T = (D^2 / a)^(1 / (b - 2)) * n^((b - 1) / (b - 2))}.
     *
     * @param law with b other than 2, where the line does not exist
     * @param precision standard error as a share of the mean, above 0
     */
    record Green(Dispersion.PowerLaw law, double precision) implements PrecisionLine {
        public Green {
            Expect.above(0, precision, "precision as a share of the mean");
            if (Math.abs(law.b() - 2) < 1e-9) {
                throw new IllegalArgumentException("there is no stop line where b of the power law is 2");
            }
        }

        @Override
        public double total(int units) {
            Expect.atLeast(1, units, "units looked at");
            double power = 1 / (law.b() - 2);
            return StrictMath.pow(precision * precision / law.a(), power)
                    * StrictMath.pow(units, (law.b() - 1) * power);
        }
    }

    /**
     * Kuno 1969, Res. Popul. Ecol. 11:127-136 (citation from memory):
     * {@code T = (alpha + 1) / (D^2 - (beta - 1) / n)}.
     *
     * @param alpha intercept of mean crowding on the mean, above -1
     * @param beta slope of mean crowding on the mean, above 0
     * @param precision standard error as a share of the mean, above 0
     */
    record Kuno(double alpha, double beta, double precision) implements PrecisionLine {
        public Kuno {
            Expect.above(-1, alpha, "alpha of mean crowding");
            Expect.above(0, beta, "beta of mean crowding");
            Expect.above(0, precision, "precision as a share of the mean");
        }

        /** Infinite while so few units can't reach the precision at any total. */
        @Override
        public double total(int units) {
            Expect.atLeast(1, units, "units looked at");
            double room = precision * precision - (beta - 1) / units;
            return room > 0 ? (alpha + 1) / room : Double.POSITIVE_INFINITY;
        }
    }

    /** The running total at which to stop after {@code units}, unrounded; round up. */
    double total(int units);
}
