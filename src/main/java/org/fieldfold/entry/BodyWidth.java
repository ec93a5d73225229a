package org.fieldfold.entry;

import java.util.Optional;

/** The narrowest rigid part of a stage that comes from outside, by which a net is chosen. */
public record BodyWidth(
        @Describe("narrowest, mm") double from,
        @Describe("widest, mm") double to,
        @Describe("largest hole that stopped it in trials, mm") Optional<Double> triedHole,
        @Describe("id of the source") Optional<String> source) {
}
