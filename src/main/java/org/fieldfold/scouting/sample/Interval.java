package org.fieldfold.scouting.sample;

import org.fieldfold.scouting.Expect;

/**
 * Where the true value is expected to lie.
 *
 * @param low may be negative infinity
 * @param high may be infinity; not below {@code low}
 */
public record Interval(double low, double high) {
    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("an interval must not end before it begins: " + low + " to "
                    + high);
        }
    }

    public boolean holds(double value) {
        return low <= value && value <= high;
    }

    /**
     * Wilson's interval for a share (Wilson 1927, J. Am. Stat. Assoc. 22:209-212), which stays within 0 to 1
     * and says something even when none or all were found.
     *
     * @param found units with the pest, 0 to {@code units}; need not be whole, for what is only expected
     * @param units above 0
     * @param z quantile, above 0
     */
    public static Interval wilson(double found, double units, double z) {
        Expect.above(0, units, "units looked at");
        Expect.within(0, units, found, "units with the pest");
        Expect.above(0, z, "z");
        double share = found / units;
        double square = z * z;
        double middle = share + square / (2 * units);
        double reach = z * Math.sqrt(share * (1 - share) / units + square / (4 * units * units));
        double scale = 1 + square / units;
        return new Interval(found == 0 ? 0 : (middle - reach) / scale,
                found == units ? 1 : (middle + reach) / scale);
    }
}
