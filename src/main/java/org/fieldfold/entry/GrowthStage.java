package org.fieldfold.entry;

import java.util.Optional;

/** A named stretch of a crop's growth, BBCH. */
public record GrowthStage(
        @Describe("first BBCH code") int from,
        @Describe("last BBCH code") int to,
        @Describe("what growers call it") @Translated String name,
        @Describe("usual days of it in the region, in the open, from the first field to the last")
        Optional<DateWindow> usual,
        @Describe("the same under plastic") Optional<DateWindow> underPlastic) {
}
