package org.fieldfold.scouting.geometry;

import java.util.List;
import java.util.OptionalDouble;
import org.fieldfold.scouting.Expect;

/**
 * One net before the pests of one crop: 'this net stops these, not those'.
 *
 * @param holeMm side of its holes (the longer one), millimetres
 * @param stops ids in the order given
 * @param letsThrough ids in the order given
 */
public record NetChoice(double holeMm, List<String> stops, List<String> letsThrough) {
    public NetChoice {
        Expect.above(0, holeMm, "hole of the net in mm");
        stops = List.copyOf(stops);
        letsThrough = List.copyOf(letsThrough);
    }

    public static NetChoice of(double holeMm, List<NetBody> bodies) {
        return new NetChoice(holeMm,
                bodies.stream().filter(body -> holeMm <= body.largestHoleMm()).map(NetBody::id).toList(),
                bodies.stream().filter(body -> holeMm > body.largestHoleMm()).map(NetBody::id).toList());
    }

    /**
     * The largest hole that stops all of them, mm; a coarser net gives the crop more air. Empty for no pest.
     */
    public static OptionalDouble coarsest(List<NetBody> bodies) {
        return bodies.stream().mapToDouble(NetBody::largestHoleMm).min();
    }
}
