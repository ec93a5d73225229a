package org.fieldfold.manuscript;

/**
 * Lengths of animals and holes in inches, as a ruler shows them. 1 in = 25.4 mm exactly (NIST SP 811, 2008,
 * appendix B.8).
 */
final class Inches {
    private static final double MM = 25.4;
    /** A ruler's finest marks by length in inches: nobody reads a 64th on something as long as a thumb. */
    private static final double[][] MARKS = {{1 / 8.0, 64}, {1 / 2.0, 32}, {4, 16}};
    private static final int COARSEST = 8;
    /** Below this many mm the marks are further apart than the lengths that they should tell apart. */
    private static final double DECIMAL = 1.5;

    private Inches() {
    }

    /** A range in mm; both ends as fractions, or both as decimals where the smaller is too small for a ruler. */
    static String range(double fromMm, double toMm) {
        boolean decimal = fromMm < DECIMAL;
        String from = decimal ? decimal(fromMm) : fraction(fromMm);
        String to = decimal ? decimal(toMm) : fraction(toMm);
        return from.equals(to) ? from : from + "–" + to;
    }

    /** To the nearest mark: 4 mm is 5/32, 30 mm is 1 3/16. */
    static String fraction(double mm) {
        double inches = mm / MM;
        int parts = COARSEST;
        for (double[] mark : MARKS) {
            if (inches < mark[0]) {
                parts = (int) mark[1];
                break;
            }
        }
        long marks = Math.round(inches * parts);
        long whole = marks / parts;
        long top = marks % parts;
        while (top > 0 && top % 2 == 0) {
            top /= 2;
            parts /= 2;
        }
        String part = top == 0 ? "" : top + "/" + parts;
        return whole == 0 && top > 0 ? part : whole + (top == 0 ? "" : "\u00a0" + part);
    }

    /** To as many digits as the length in mm has, and one more where its first digit becomes smaller. */
    static String decimal(double mm) {
        return Figures.converted(mm, mm / MM);
    }
}
