package org.fieldfold.entry;

import java.util.Optional;

/** One row of an interval table: from one catch to another, what to do. */
public record ThresholdStep(
        @Describe("from this catch on") double from,
        @Describe("up to this catch, or nothing for the last row") Optional<Double> to,
        @Describe("what it means") Text act) {
}
