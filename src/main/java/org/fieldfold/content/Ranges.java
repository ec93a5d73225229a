package org.fieldfold.content;

import java.util.Map;

/**
 * What a number can be for what it measures, whatever the entry. Growth stages are two-digit BBCH codes, 00
 * to 99 (Meier 2018); the others only keep out what is a slip of the key.
 */
final class Ranges {
    private static final Shape.Range BBCH = new Shape.Range(0, 99);
    private static final Shape.Range COUNT = new Shape.Range(1, 1_000_000);
    /** Toxicity categories I to IV, 40 CFR 156.62. */
    private static final Shape.Range CATEGORY = new Shape.Range(1, 4);
    private static final Shape.Range MILLIMETRES = new Shape.Range(0, 1_000);

    private static final Map<String, Shape.Range> BY_COMPONENT = Map.ofEntries(
            Map.entry("StageWindow.from", BBCH), Map.entry("StageWindow.to", BBCH),
            Map.entry("GrowthStage.from", BBCH), Map.entry("GrowthStage.to", BBCH),
            Map.entry("Interval.from", new Shape.Range(0, 1_000)), Map.entry("Interval.to",
                    new Shape.Range(0, 1_000)),
            Map.entry("SizeRange.from", MILLIMETRES), Map.entry("SizeRange.to", MILLIMETRES),
            Map.entry("TypeLimits.from", new Shape.Range(4, 72)), Map.entry("TypeLimits.to",
                    new Shape.Range(4, 72)),
            Map.entry("Monitoring.sample", COUNT), Map.entry("Monitoring.stops", COUNT),
            Map.entry("Monitoring.everyDays", new Shape.Range(1, 366)),
            Map.entry("Threshold.value", new Shape.Range(0, 1_000_000)), Map.entry("Threshold.per", COUNT),
            Map.entry("Threshold.days", new Shape.Range(1, 366)),
            Map.entry("Toxicity.oral", CATEGORY), Map.entry("Toxicity.dermal", CATEGORY),
            Map.entry("Toxicity.inhalation", CATEGORY), Map.entry("Toxicity.eye", CATEGORY),
            Map.entry("Toxicity.skin", CATEGORY), Map.entry("Practice.tier", new Shape.Range(1, 2)),
            Map.entry("EarlyStop.min", COUNT), Map.entry("EarlyStop.max", new Shape.Range(1, 2_000)),
            Map.entry("EarlyStop.step", COUNT), Map.entry("EarlyStop.act", new Shape.Range(0, 1_000)),
            Map.entry("NetHole.hole", MILLIMETRES), Map.entry("SeasonRotation.mostUses", COUNT),
            Map.entry("Edition.year", new Shape.Range(1900, 2999)),
            Map.entry("Edition.maxAgeMonths", new Shape.Range(1, 600)),
            Map.entry("Source.year", new Shape.Range(1500, 2999)));

    private Ranges() {
    }

    static Shape.Range of(Class<?> type, String component) {
        return BY_COMPONENT.getOrDefault(type.getSimpleName() + "." + component, Shape.Range.ANY);
    }
}
