package org.fieldfold.entry;

import java.util.Optional;

/** What one life stage looks like. */
public record StageDescription(
        @Describe("egg, larva, nymph, pupa, adult or colony") LifeStage stage,
        @Describe("true body length in mm") SizeRange size,
        @Describe("what it looks like: the marks that decide") Text looks,
        @Describe("width of its narrowest rigid part, for the choice of nets") Optional<BodyWidth> bodyWidth,
        @Describe("where it sits") Optional<Text> found) {
}
