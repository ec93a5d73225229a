package org.fieldfold.fold;

/** Points and millimetres: 72 points to the inch of 25.4 mm. */
public final class Lengths {
    /**
     * What stays free along the edges of the sheet: a quarter inch, the usual unprintable edge and a little.
     */
    public static final double EDGE = points(6.35);
    /** What stays free along folds and cuts: duplex printers are 1 to 2 mm out of register. */
    public static final double FOLD = points(3);

    private Lengths() {
    }

    public static double points(double millimetres) {
        return millimetres * 72 / 25.4;
    }

    public static double millimetres(double points) {
        return points * 25.4 / 72;
    }
}
