package org.fieldfold.entry;

import java.util.List;

/** A crop, its growth stages and what a scout looks at on it. */
public record Crop(
        @Describe("short id") String id,
        @Describe("name, as growers say it") @Translated String name,
        @Describe("genus and species") String scientific,
        @Describe("what it needs to set what is harvested") Pollination pollination,
        @Describe("sampling units on this crop") List<SamplingUnit> units,
        @Describe("ink of its titles, #rrggbb, at least 7:1 on white") String ink,
        @Describe("growth stages, in order") List<GrowthStage> stages) {
}
