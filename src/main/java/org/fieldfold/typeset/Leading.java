package org.fieldfold.typeset;

/**
 * The baseline grid of a guide: every height on a panel is a whole number of half lines, so that lines of
 * neighbouring panels stand level.
 *
 * @param size of body type, in points
 * @param half half the distance from baseline to baseline, in points; at least 0.625 of the size, for leading
 *     of 125 %
 * @param small size of captions, of the foot and of the numbers in tally boxes; never below the smallest
 *     legible
 * @param drop from a baseline down to the foot of its line
 */
record Leading(double size, double half, double small, double drop) {
    private static final double RATIO = 1.25;

    /**
     * The grid that fills a live height exactly.
     *
     * @param smallest type size that may be used for anything that is read
     */
    static Leading of(double size, double smallest, double liveHeight, double capHeight) {
        double rows = Math.max(1, Math.floor(liveHeight / (size * RATIO / 2) + 1e-6));
        double half = liveHeight / rows;
        return new Leading(size, half, Math.max(smallest, size * 0.88), half - size * capHeight / 2000);
    }

    double line() {
        return 2 * half;
    }

    /** Whole half lines that hold {@code points}. */
    int units(double points) {
        return (int) Math.ceil(points / half - 1e-6);
    }

    /** Whole half lines inside {@code points}. */
    int capacity(double points) {
        return (int) Math.floor(points / half + 1e-6);
    }

    /** The baseline of a text whose row ends {@code units} half lines below {@code top}. */
    double baseline(double top, int units) {
        return top + units * half - drop;
    }
}
