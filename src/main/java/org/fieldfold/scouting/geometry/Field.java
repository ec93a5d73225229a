package org.fieldfold.scouting.geometry;

import org.fieldfold.scouting.Expect;

/**
 * A rectangular field; both sides in one unit.
 *
 * @param width above 0
 * @param length above 0
 */
public record Field(double width, double length) {
    public Field {
        Expect.above(0, width, "width of the field");
        Expect.above(0, length, "length of the field");
    }

    public double area() {
        return width * length;
    }

    /**
     * Share of the field that a border of trap crop takes: {@code 1 - (X - 2b)(Y - 2b) / (XY)}.
     *
     * @param border width all round, 0 up to half the shorter side
     */
    public double borderShare(double border) {
        Expect.within(0, Math.min(width, length) / 2, border, "width of the border");
        return 1 - (width - 2 * border) * (length - 2 * border) / area();
    }

    /**
     * Width of the border that takes {@code share} of the field: the smaller root of
     * {@code 4 b^2 - 2 (X + Y) b + s X Y = 0}.
     *
     * @param share 0 to 1
     */
    public double borderFor(double share) {
        Expect.within(0, 1, share, "share of the field");
        double sides = width + length;
        return (sides - Math.sqrt(Math.max(0, sides * sides - 4 * share * area()))) / 4;
    }
}
