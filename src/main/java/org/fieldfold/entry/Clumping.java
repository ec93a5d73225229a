package org.fieldfold.entry;

import java.util.Optional;
import org.fieldfold.scouting.sample.Dispersion;

/** How pests lie over the units: a and b of the power law of Taylor, or k of the negative binomial. */
public record Clumping(
        @Describe("a of the power law, variance = a · mean^b") Optional<Double> a,
        @Describe("b of the power law") Optional<Double> b,
        @Describe("k of the negative binomial, instead of a and b") Optional<Double> k,
        @Describe("id of the source") Optional<String> source) {
    /** As scouting computes with it; empty unless it is one of the two, with figures that make one. */
    public Optional<Dispersion> dispersion() {
        try {
            if (k.isPresent() && a.isEmpty() && b.isEmpty()) {
                return Optional.of(new Dispersion.Clumped(k.get()));
            }
            return k.isEmpty() && a.isPresent() && b.isPresent()
                    ? Optional.of(new Dispersion.PowerLaw(a.get(), b.get())) : Optional.empty();
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }
}
