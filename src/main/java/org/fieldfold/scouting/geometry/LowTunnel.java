package org.fieldfold.scouting.geometry;

import org.fieldfold.scouting.Expect;
import org.fieldfold.scouting.WholeCount;

/**
 * Hoops in a row and a sheet over them. All lengths are in one unit, whichever.
 *
 * @param length of the bed under cover, above 0
 * @param spacing from hoop to hoop, above 0
 * @param depth to which each end of a hoop stands in the soil, 0 or more
 * @param allowance of sheet on every side, buried or weighted down, 0 or more
 */
public record LowTunnel(Hoop hoop, double length, double spacing, double depth, double allowance) {
    public LowTunnel {
        Expect.above(0, length, "length of the tunnel");
        Expect.above(0, spacing, "distance between hoops");
        Expect.within(0, Double.MAX_VALUE, depth, "depth of a hoop in the soil");
        Expect.within(0, Double.MAX_VALUE, allowance, "allowance of the sheet");
    }

    /** Hoops needed, one at each end. */
    public int hoops() {
        return Math.addExact(WholeCount.up(length / spacing), 1);
    }

    /** Length to which each hoop is cut. */
    public double stock() {
        return hoop.arc() + 2 * depth;
    }

    /** Width of the sheet, across the bed. */
    public double sheetWidth() {
        return hoop.arc() + 2 * allowance;
    }

    /** Length of the sheet, with enough to close both ends down to the soil. */
    public double sheetLength() {
        return length + 2 * (hoop.height() + allowance);
    }
}
