package org.fieldfold.scouting;

import java.util.Locale;

/**
 * What a figure must be before anything is computed from it; messages name the figure, the limit and what
 * came.
 */
public final class Expect {
    private Expect() {
    }

    /** @throws IllegalArgumentException when {@code found} is below {@code least} */
    public static void atLeast(int least, int found, String what) {
        if (found < least) {
            throw new IllegalArgumentException(what + " must be at least " + least + ", found " + found);
        }
    }

    /** @throws IllegalArgumentException when {@code found} is not a finite number above {@code limit} */
    public static void above(double limit, double found, String what) {
        if (!(found > limit) || Double.isInfinite(found)) {
            throw new IllegalArgumentException(what + " must be above " + plain(limit) + ", found "
                    + plain(found));
        }
    }

    /**
     * @throws IllegalArgumentException when {@code found} is not a number from {@code least} to {@code most}
     */
    public static void within(double least, double most, double found, String what) {
        if (!(found >= least && found <= most)) {
            throw new IllegalArgumentException(what + " must be from " + plain(least) + " to " + plain(most)
                    + ", found " + plain(found));
        }
    }

    /** @throws IllegalArgumentException when {@code found} does not lie between the two, or on one of them */
    public static void between(double below, double above, double found, String what) {
        if (!(found > below && found < above)) {
            throw new IllegalArgumentException(what + " must be above " + plain(below) + " and below "
                    + plain(above) + ", found " + plain(found));
        }
    }

    /** @throws IllegalArgumentException when {@code found} is infinite or not a number */
    public static void finite(double found, String what) {
        if (!Double.isFinite(found)) {
            throw new IllegalArgumentException(what + " must be a number, found " + found);
        }
    }

    /** A number as people write it: whole numbers without a point, others with up to four decimals. */
    static String plain(double number) {
        if (!Double.isFinite(number)) {
            return Double.toString(number);
        }
        String fixed = String.format(Locale.ROOT, "%.4f", number);
        return fixed.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
