package org.fieldfold.scouting.sequential;

import org.fieldfold.scouting.Expect;

/**
 * Wald's sequential probability ratio test (Wald 1947, Sequential Analysis): with a running total T on n
 * units, stop low when {@code T <= lowIntercept + slope * n}, stop high when
 * {@code T >= highIntercept + slope * n}.
 *
 * @param slope pests (or units with pest) per unit looked at
 * @param lowIntercept below 0
 * @param highIntercept above 0
 */
public record StopLines(double slope, double lowIntercept, double highIntercept) {
    /**
     * @param low density at which acting would be wrong
     * @param high density at which not acting would be wrong
     * @param alpha chance of acting at {@code low}, above 0
     * @param beta chance of not acting at {@code high}, above 0; {@code alpha + beta < 1}
     */
    public static StopLines of(CountModel model, double low, double high, double alpha, double beta) {
        Expect.between(0, 1, alpha, "chance of acting at the low density");
        Expect.between(0, 1 - alpha, beta, "chance of not acting at the high density");
        CountModel.LogRatio ratio = model.logRatio(low, high);
        return new StopLines(ratio.perUnit() / ratio.perPest(),
                StrictMath.log(beta / (1 - alpha)) / ratio.perPest(),
                StrictMath.log((1 - beta) / alpha) / ratio.perPest());
    }

    double low(int units) {
        return lowIntercept + slope * units;
    }

    double high(int units) {
        return highIntercept + slope * units;
    }

    /** The line half-way between the two. */
    double middle(int units) {
        return (low(units) + high(units)) / 2;
    }
}
