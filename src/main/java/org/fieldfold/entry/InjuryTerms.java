package org.fieldfold.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.scouting.decision.InjuryLevel;

/** What a threshold is worth in money: the terms of the economic injury level, C / (V · I · D · K). */
public record InjuryTerms(
        @Describe("id of the price of one control on a unit of area (C), in prices.yaml") String cost,
        @Describe("id of the price of a unit of produce (V), in prices.yaml") String value,
        @Describe("units of injury that one pest causes (I); a pest as the threshold's value counts it")
        double injury,
        @Describe("produce lost on a unit of area for a unit of injury (D)") double loss,
        @Describe("share of the injury that the control prevents (K), above 0, at most 1") double kill,
        @Describe("share of the injury level at which to act, above 0, at most 1") double share,
        @Describe("values of the produce for the printed table, rising") List<Double> tableValues,
        @Describe("costs of control for the printed table, rising") List<Double> tableCosts,
        @Describe("id of the source") Optional<String> source) {
    /**
     * The level at given prices.
     *
     * @throws IllegalArgumentException when a term makes none, with what was expected and found
     */
    public InjuryLevel level(double costNow, double valueNow) {
        return new InjuryLevel(costNow, valueNow, injury, loss, kill);
    }

    /** The level at the prices of the base; empty when a price is not known or a term makes none. */
    public Optional<InjuryLevel> level(Map<String, Placed<Price>> prices) {
        Placed<Price> costNow = prices.get(cost);
        Placed<Price> valueNow = prices.get(value);
        if (costNow == null || valueNow == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(level(costNow.value().value(), valueNow.value().value()));
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }

    /** Where one would act at the prices of the base, in the threshold's unit and unrounded. */
    public Optional<Double> actAt(Map<String, Placed<Price>> prices) {
        return level(prices).filter(level -> share > 0 && share <= 1)
                .map(level -> level.actionThreshold(share));
    }
}
