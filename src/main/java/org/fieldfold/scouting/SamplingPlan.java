package org.fieldfold.scouting;

/**
 * Where to look and at how much.
 *
 * @param unit what is looked at, as the entry names it: plants, stems, leaves, traps
 * @param size units in the whole sample, at least 1
 * @param walk the way through the field
 * @param stops places at which one stands still, at least 1
 * @param each units looked at in each place; {@code stops * each == size}
 * @param everyDays days from one count to the next; 0 where none is stated
 */
public record SamplingPlan(String unit, int size, Walk walk, int stops, int each, int everyDays) {
    public SamplingPlan {
        if (unit.isBlank()) {
            throw new IllegalArgumentException("a sampling plan needs the unit that is looked at");
        }
        Expect.atLeast(1, size, "sample size");
        Expect.atLeast(1, stops, "stops");
        Expect.atLeast(1, each, "units at each stop");
        Expect.atLeast(0, everyDays, "days between counts");
        if ((long) stops * each != size) {
            throw new IllegalArgumentException("stops times units at each must be the sample size: "
                    + stops + " x " + each + " is " + (long) stops * each + ", not " + size);
        }
    }
}
