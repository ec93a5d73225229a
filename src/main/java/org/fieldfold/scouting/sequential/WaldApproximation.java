package org.fieldfold.scouting.sequential;

/**
 * One point of Wald's own approximation (Wald 1947), which knows neither a smallest nor a largest sample and
 * takes the total to stop exactly on a line. For comparison only; {@link StopTable#in} is exact.
 *
 * @param density where on the curve the point lies
 * @param chanceOfNotActing the operating characteristic there
 * @param unitsLookedAt the average sample number there
 */
public record WaldApproximation(double density, double chanceOfNotActing, double unitsLookedAt) {
    /** The parameter of the curve below which its limit at 0 is taken. */
    private static final double NEAR_ZERO = 1e-9;

    /**
     * @param h the parameter of the curve: 1 at the low density, -1 at the high one, 0 at the slope of the
     *     lines
     */
    public static WaldApproximation at(double h, CountModel model, double low, double high, double alpha,
            double beta) {
        double a = StrictMath.log((1 - beta) / alpha);
        double b = StrictMath.log(beta / (1 - alpha));
        CountModel.LogRatio ratio = model.logRatio(low, high);
        if (Math.abs(h) < NEAR_ZERO) {
            double density = ratio.perUnit() / ratio.perPest();
            double square = model.variance(density) * ratio.perPest() * ratio.perPest();
            return new WaldApproximation(density, a / (a - b), -a * b / square);
        }
        double density = density(h, model, low, high);
        double holds = StrictMath.expm1(h * a) / (StrictMath.exp(h * a) - StrictMath.exp(h * b));
        double mean = density * ratio.perPest() - ratio.perUnit();
        return new WaldApproximation(density, holds, (holds * b + (1 - holds) * a) / mean);
    }

    /** The density at which exp(h z), z the log ratio of one unit, has mean 1. */
    private static double density(double h, CountModel model, double low, double high) {
        if (model instanceof CountModel.NegativeBinomial nb) {
            // in the odds form q = m / (m + k) it reads as the binomial one
            double q = share(h, low / (low + nb.k()), high / (high + nb.k()));
            return nb.k() * q / (1 - q);
        }
        return model instanceof CountModel.Poisson
                ? (high - low) * h / StrictMath.expm1(h * StrictMath.log(high / low)) : share(h, low, high);
    }

    private static double share(double h, double p0, double p1) {
        double missed = StrictMath.pow((1 - p1) / (1 - p0), h);
        return (1 - missed) / (StrictMath.pow(p1 / p0, h) - missed);
    }
}
