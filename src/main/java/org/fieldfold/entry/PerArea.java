package org.fieldfold.entry;

import java.util.Optional;
import org.fieldfold.scouting.geometry.Density;

/** How many traps or stops an area needs. */
public record PerArea(
        @Describe("least number, however small the area") int atLeast,
        @Describe("area for which that is enough; leave out when each is for its own piece")
        Optional<Double> upTo,
        @Describe("area that asks for one more") double oneMoreEach,
        @Describe("acre or hectare") AreaUnit unit,
        @Describe("id of the source") Optional<String> source) {
    /** Units of land. */
    public enum AreaUnit {
        ACRE, HECTARE
    }

    /** As scouting computes with it; empty when its figures make none. */
    public Optional<Density> density() {
        try {
            return Optional.of(new Density(atLeast, upTo.orElse(atLeast * oneMoreEach), oneMoreEach));
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }
}
