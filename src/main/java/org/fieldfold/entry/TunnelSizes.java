package org.fieldfold.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.scouting.geometry.Hoop;

/** Hoops over beds, so that lengths of hoops and sheets can be computed; all lengths in one unit. */
public record TunnelSizes(
        @Describe("foot or metre, of every length here") LengthUnit unit,
        @Describe("widths of beds under the hoop") List<Double> spans,
        @Describe("height of the flat hoops; leave out for half circles only") Optional<Double> height,
        @Describe("height of straight legs below a half circle") Optional<Double> leg,
        @Describe("from hoop to hoop") double spacing,
        @Describe("depth of each end in the soil") double depth,
        @Describe("sheet left over on every side, to bury or weigh down") double allowance,
        @Describe("length of the bed in the example") double bedLength,
        @Describe("id of the source") Optional<String> source) {
    /**
     * The hoops over a bed: a half circle, then a flat one and one on legs where they are asked for.
     *
     * @throws IllegalArgumentException for lengths of which no hoop can be bent
     */
    public List<Hoop> hoops(double span) {
        List<Hoop> hoops = new ArrayList<>(List.of(new Hoop.Semicircle(span)));
        height.ifPresent(high -> hoops.add(new Hoop.HalfEllipse(span, high)));
        leg.ifPresent(straight -> hoops.add(new Hoop.Legged(span, straight)));
        return hoops;
    }
}
