package org.fieldfold.entry;

import java.util.List;
import java.util.Optional;

/** A net or cover as it is sold by its holes. */
public record NetHole(
        @Describe("what it is called, never a brand") @Translated String name,
        @Describe("side of its holes, the longer one, mm") double hole,
        @Describe("ids of the pests that it is said to stop") List<String> stops,
        @Describe("id of the source") Optional<String> source) {
}
