package org.fieldfold.scouting.sequential;

/**
 * What a plan does, on average, in fields of one density.
 *
 * @param chanceOfNotActing 0 to 1: the operating characteristic
 * @param unitsLookedAt the average sample number
 */
public record Outcome(double chanceOfNotActing, double unitsLookedAt) {
    public double chanceOfActing() {
        return 1 - chanceOfNotActing;
    }
}
