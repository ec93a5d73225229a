package org.fieldfold.scouting.sample;

import org.fieldfold.scouting.Expect;

/**
 * The mean per unit from the share of units infested: {@code ln m = alpha + beta * ln(-ln(1 - P))} (Kono and
 * Sugino 1958; Gerrard and Chiang 1970, Ecology 51:237-245).
 *
 * @param beta above 0, so that more infested units mean more pests
 */
public record IncidenceCurve(double alpha, double beta) {
    public IncidenceCurve {
        Expect.finite(alpha, "alpha of an incidence curve");
        Expect.above(0, beta, "beta of an incidence curve");
    }

    /** @param infested share of units with the pest, between 0 and 1 */
    public double mean(double infested) {
        Expect.between(0, 1, infested, "share of units with the pest");
        return StrictMath.exp(alpha + beta * StrictMath.log(-StrictMath.log1p(-infested)));
    }

    /** @param mean pests per unit, above 0 */
    public double infested(double mean) {
        Expect.above(0, mean, "mean per unit");
        return -StrictMath.expm1(-StrictMath.exp((StrictMath.log(mean) - alpha) / beta));
    }
}
