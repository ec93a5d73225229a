package org.fieldfold.scouting.geometry;

import org.fieldfold.scouting.Expect;

/**
 * The catch test on 1/128 acre: drive a strip of that area, then catch the water of one nozzle for as long as
 * that took. There are 128 fluid ounces in a gallon, so the ounces caught are the gallons of water an acre.
 * Water only: what goes into it is on the label and nowhere else.
 */
public final class CatchTest {
    /** Square feet in an acre. */
    public static final double SQUARE_FEET_PER_ACRE = 43_560;
    /** Square metres in an acre, by the international foot. */
    public static final double SQUARE_METRES_PER_ACRE = 4046.8564224;

    private static final double OUNCES_PER_GALLON = 128;
    private static final double INCHES_PER_FOOT = 12;
    private static final double FEET_PER_MINUTE_AT_1_MPH = 88;

    private CatchTest() {
    }

    /** Square feet of the strip: 340.3125. */
    public static double stripArea() {
        return SQUARE_FEET_PER_ACRE / OUNCES_PER_GALLON;
    }

    /**
     * Feet to drive.
     *
     * @param spacing of nozzles, or of rows where all nozzles of a row are caught together, in inches
     */
    public static double stripFeet(double spacing) {
        Expect.above(0, spacing, "nozzle spacing in inches");
        return stripArea() * INCHES_PER_FOOT / spacing;
    }

    /**
     * Gallons of water an acre from what was caught over any strip; over the right one it is the number of
     * ounces.
     *
     * @param ounces fluid ounces caught
     * @param feet driven in that time
     * @param width sprayed by what was caught, in inches
     */
    public static double gallonsOfWaterPerAcre(double ounces, double feet, double width) {
        Expect.above(0, ounces, "ounces caught");
        Expect.above(0, feet, "feet driven");
        Expect.above(0, width, "width in inches");
        return ounces / OUNCES_PER_GALLON * SQUARE_FEET_PER_ACRE * INCHES_PER_FOOT / (feet * width);
    }

    /**
     * Minutes to cover an acre.
     *
     * @param milesPerHour above 0
     * @param width covered at once, in inches
     */
    public static double minutesPerAcre(double milesPerHour, double width) {
        Expect.above(0, milesPerHour, "speed");
        Expect.above(0, width, "width in inches");
        return SQUARE_FEET_PER_ACRE * INCHES_PER_FOOT / (width * milesPerHour * FEET_PER_MINUTE_AT_1_MPH);
    }

    /** Feet of row on an acre. */
    public static double rowFeetPerAcre(double rowSpacing) {
        Expect.above(0, rowSpacing, "row spacing in inches");
        return SQUARE_FEET_PER_ACRE * INCHES_PER_FOOT / rowSpacing;
    }

    /** Plants on an acre, both distances in inches. */
    public static double plantsPerAcre(double inRow, double rowSpacing) {
        Expect.above(0, inRow, "distance in the row in inches");
        return rowFeetPerAcre(rowSpacing) * INCHES_PER_FOOT / inRow;
    }
}
