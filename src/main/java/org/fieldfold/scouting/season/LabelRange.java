package org.fieldfold.scouting.season;

import org.fieldfold.scouting.Expect;

/**
 * A waiting time as it stands on the labels of one material, which differ.
 *
 * @param shortest on any label, 0 or more
 * @param longest on any label, not below {@code shortest}
 */
public record LabelRange(int shortest, int longest) {
    public LabelRange {
        Expect.atLeast(0, shortest, "shortest waiting time");
        Expect.atLeast(shortest, longest, "longest waiting time");
    }

    public static LabelRange of(int same) {
        return new LabelRange(same, same);
    }
}
