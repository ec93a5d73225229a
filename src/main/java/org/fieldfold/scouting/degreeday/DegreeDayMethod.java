package org.fieldfold.scouting.degreeday;

/** How the heat of a day is estimated from its lowest and highest temperature. */
public enum DegreeDayMethod {
    /** Mean of minimum and maximum, above the lower threshold (McMaster and Wilhelm 1997, method 1). */
    SIMPLE_AVERAGE(false, false),
    /**
     * Minimum and maximum each brought between the thresholds first (McMaster and Wilhelm 1997, method 2).
     */
    MODIFIED_AVERAGE(false, false),
    /** A triangle through minimum, maximum, minimum (Sevacherian et al. 1977). */
    SINGLE_TRIANGLE(true, false),
    /** Half a triangle up, half down to the next day's minimum (Zalom et al. 1983). */
    DOUBLE_TRIANGLE(true, true),
    /** A sine through minimum, maximum, minimum (Baskerville and Emin 1969). */
    SINGLE_SINE(true, false),
    /** Half a sine up, half down to the next day's minimum (Allen 1976). */
    DOUBLE_SINE(true, true);

    private final boolean followsCurve;
    private final boolean needsNextMinimum;

    DegreeDayMethod(boolean followsCurve, boolean needsNextMinimum) {
        this.followsCurve = followsCurve;
        this.needsNextMinimum = needsNextMinimum;
    }

    /**
     * Whether a curve of the day is assumed; only then do cutoffs other than the horizontal one have a
     * meaning.
     */
    public boolean followsCurve() {
        return followsCurve;
    }

    /** Whether the next day's minimum counts too. */
    public boolean needsNextMinimum() {
        return needsNextMinimum;
    }
}
