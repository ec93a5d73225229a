package org.fieldfold.scouting;

/** Whole numbers from computed ones. Nobody can find 4.5 plants, and 69.99999999 is 70 that was computed. */
public final class WholeCount {
    /** How far, as a share of the number (or of 1 below 1), a computed whole number may lie beside itself. */
    static final double SLACK = 1e-9;

    private WholeCount() {
    }

    /**
     * The smallest whole number that is not below {@code exact}.
     *
     * @throws IllegalArgumentException when it is not a number or more than an int holds
     */
    public static int up(double exact) {
        double whole = Math.rint(exact);
        return toInt(isWhole(exact, whole) ? whole : Math.ceil(exact), exact);
    }

    /**
     * The largest whole number that is not above {@code exact}.
     *
     * @throws IllegalArgumentException when it is not a number or more than an int holds
     */
    public static int down(double exact) {
        double whole = Math.rint(exact);
        return toInt(isWhole(exact, whole) ? whole : Math.floor(exact), exact);
    }

    private static boolean isWhole(double exact, double whole) {
        return Math.abs(exact - whole) <= SLACK * Math.max(1, Math.abs(exact));
    }

    private static int toInt(double whole, double exact) {
        if (!(Math.abs(whole) <= Integer.MAX_VALUE)) {
            throw new IllegalArgumentException("no count can be made of " + exact);
        }
        return (int) whole;
    }
}
