package org.fieldfold.entry;

/** Between which sizes of body type a guide may be set, in points. */
public record TypeLimits(@Describe("smallest, points") double from, @Describe("largest, points") double to) {
}
