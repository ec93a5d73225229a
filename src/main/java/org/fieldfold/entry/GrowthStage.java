package org.fieldfold.entry;

/** A named stretch of a crop's growth, BBCH. */
public record GrowthStage(
        @Describe("first BBCH code") int from,
        @Describe("last BBCH code") int to,
        @Describe("what growers call it") @Translated String name) {
}
