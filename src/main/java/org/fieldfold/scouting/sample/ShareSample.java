package org.fieldfold.scouting.sample;

import org.fieldfold.scouting.Expect;
import org.fieldfold.scouting.WholeCount;

/** How many units to look at when each only has the pest or has it not. Results are unrounded unless said. */
public final class ShareSample {
    private ShareSample() {
    }

    /**
     * Units for a precision as a share of the share itself: {@code (1 - p) / (p * D^2)}.
     *
     * @param share expected share of units with the pest, between 0 and 1
     * @param precision standard error as a share of {@code share}, above 0
     */
    public static double relative(double share, double precision) {
        checkShare(share);
        Expect.above(0, precision, "precision as a share");
        return (1 - share) / (share * precision * precision);
    }

    /**
     * Units for a half-width in the share's own unit: {@code z^2 * p * q / d^2}.
     *
     * @param halfWidth half of the interval, 0.05 for 'plus or minus 5 percentage points'
     */
    public static double absolute(double share, double halfWidth, double z) {
        checkShare(share);
        Expect.above(0, halfWidth, "half-width");
        Expect.above(0, z, "z");
        return z * z * share * (1 - share) / (halfWidth * halfWidth);
    }

    /**
     * The same where there are only {@code all} units: {@code n / (1 + n / N)}, the same as
     * {@code z^2 p q / (d^2 + z^2 p q / N)}.
     */
    public static double absoluteOf(int all, double share, double halfWidth, double z) {
        Expect.atLeast(1, all, "units in all");
        double unlimited = absolute(share, halfWidth, z);
        return unlimited / (1 + unlimited / all);
    }

    /**
     * Whole number of units among which at least one with the pest is found, with the chance {@code level},
     * when the share {@code share} has it: {@code ln(1 - level) / ln(1 - share)}, rounded up.
     */
    public static int toFindOne(double share, double level) {
        checkShare(share);
        Expect.between(0, 1, level, "chance of finding one");
        return WholeCount.up(StrictMath.log1p(-level) / StrictMath.log1p(-share));
    }

    /**
     * The same among {@code all} units of which {@code infested} have the pest, drawn without putting back;
     * exact.
     *
     * @param infested 1 to {@code all}
     */
    public static int toFindOneOf(int all, int infested, double level) {
        Expect.within(1, all, infested, "units with the pest");
        Expect.between(0, 1, level, "chance of finding one");
        double missed = 1;
        int drawn = 0;
        while (missed > (1 - level) * (1 + 1e-12) && drawn < all) {
            missed *= (double) Math.max(0, all - infested - drawn) / (all - drawn);
            drawn++;
        }
        return drawn;
    }

    /**
     * The smallest share that {@code units} without the pest still rule out at {@code level}: 'none found in
     * n'.
     */
    public static double ruledOut(int units, double level) {
        Expect.atLeast(1, units, "units looked at");
        Expect.between(0, 1, level, "chance of finding one");
        return -StrictMath.expm1(StrictMath.log1p(-level) / units);
    }

    private static void checkShare(double share) {
        Expect.between(0, 1, share, "share of units with the pest");
    }
}
