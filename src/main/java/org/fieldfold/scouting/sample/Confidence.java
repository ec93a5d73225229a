package org.fieldfold.scouting.sample;

/** How sure an interval is meant to be, with the two-sided quantile z of the normal distribution. */
public enum Confidence {
    /** One standard error; what 'standard error as a share of the mean' means in print. */
    ONE_STANDARD_ERROR(0.6826894921370859, 1),
    PERCENT_80(0.80, 1.2815515655446004),
    PERCENT_90(0.90, 1.6448536269514722),
    PERCENT_95(0.95, 1.959963984540054),
    PERCENT_99(0.99, 2.5758293035489004);

    private final double level;
    private final double z;

    Confidence(double level, double z) {
        this.level = level;
        this.z = z;
    }

    /** From 0 to 1. */
    public double level() {
        return level;
    }

    public double z() {
        return z;
    }
}
