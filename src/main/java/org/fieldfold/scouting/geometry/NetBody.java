package org.fieldfold.scouting.geometry;

import java.util.OptionalDouble;
import org.fieldfold.scouting.Expect;

/**
 * What a net has to stop: the narrowest rigid part, the thorax, of the smallest stage that comes from
 * outside.
 *
 * @param id of the entry
 * @param widthMm of the thorax, millimetres, above 0
 * @param triedHoleMm the largest hole that stopped it in trials, millimetres; empty where none is published
 */
public record NetBody(String id, double widthMm, OptionalDouble triedHoleMm) {
    /**
     * Largest hole as a share of the body's width where no trial says better. Our own margin, no source:
     * trials show that width alone does not decide, for some insects wriggle through and others spread their
     * wings.
     */
    public static final double MARGIN = 0.85;

    public NetBody {
        Expect.above(0, widthMm, "width of the thorax in mm");
        triedHoleMm.ifPresent(hole -> Expect.above(0, hole, "largest hole tried in mm"));
    }

    /** The largest hole that is taken to stop it, mm. */
    public double largestHoleMm() {
        return triedHoleMm.orElse(MARGIN * widthMm);
    }
}
