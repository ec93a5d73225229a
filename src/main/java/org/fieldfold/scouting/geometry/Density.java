package org.fieldfold.scouting.geometry;

import org.fieldfold.scouting.Expect;
import org.fieldfold.scouting.WholeCount;

/**
 * How many traps or stops an area needs: a number that is enough up to some area, and one more for every
 * further piece of land, begun or whole.
 *
 * @param atLeast enough up to {@code upTo}, at least 1
 * @param upTo area for which that is enough, 0 or more; the unit is the caller's
 * @param oneMoreEach area that asks for one more, above 0
 */
public record Density(int atLeast, double upTo, double oneMoreEach) {
    public Density {
        Expect.atLeast(1, atLeast, "least number of traps or stops");
        Expect.within(0, Double.MAX_VALUE, upTo, "area for which the least number is enough");
        Expect.above(0, oneMoreEach, "area for one more");
    }

    /** One for every piece of {@code area}, and at least one. */
    public static Density oneFor(double area) {
        return new Density(1, area, area);
    }

    /** @param area above 0 */
    public int on(double area) {
        Expect.above(0, area, "area");
        return Math.addExact(atLeast, WholeCount.up(Math.max(0, area - upTo) / oneMoreEach));
    }
}
