package org.fieldfold.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.entry.ActiveIngredient;
import org.fieldfold.entry.BeeHazard;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Interval;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/**
 * A material has its mode-of-action group, its waiting times, its bee hazard and its signal words: at the
 * material, and again at each measure that sends a reader to it.
 */
final class MaterialIncomplete implements Rule {
    @Override
    public String id() {
        return "material-incomplete";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<ActiveIngredient> placed : base.materials().values()) {
            ActiveIngredient material = placed.value();
            require(material.group(), "mode-of-action group", "group: 4A, or group: none", placed, found);
            require(material.phiDays(), "pre-harvest interval", "phi-days: {from: 1, to: 7}", placed, found);
            require(material.reiHours(), "restricted-entry interval", "rei-hours: {from: 4, to: 12}", placed,
                    found);
            require(material.bees(), "bee hazard", "bees: high, moderate or low", placed, found);
            if (material.bees().filter(hazard -> hazard == BeeHazard.HIGH).isPresent()) {
                require(material.beeNote(), "how bees are kept safe", "bee-note: in a sentence", placed,
                        found);
            }
            if (material.signalWords().isEmpty() && !wordless(material)) {
                require(Optional.empty(), "signal word of its labels", "signal-words: [caution]", placed,
                        found);
            }
            backwards(material.phiDays(), "phi-days", placed, found);
            backwards(material.reiHours(), "rei-hours", placed, found);
        }
        base.pests().values().forEach(pest -> Controls.insecticides(pest.value()).forEach((i, use) ->
                Optional.ofNullable(base.materials().get(use.material())).map(Placed::value)
                        .ifPresent(material -> used(material, pest.at("controls", i, "material"), found))));
    }

    private void used(ActiveIngredient material, Span at, Consumer<Finding> found) {
        List<String> lacks = new ArrayList<>();
        if (material.group().isEmpty()) {
            lacks.add("mode-of-action group");
        }
        if (material.phiDays().isEmpty()) {
            lacks.add("pre-harvest interval");
        }
        if (material.reiHours().isEmpty()) {
            lacks.add("restricted-entry interval");
        }
        if (!lacks.isEmpty()) {
            found.accept(Finding.error(at, id(), "expected a material that readers can plan with, found that "
                    + material.name() + " has no " + String.join(", ", lacks),
                    "fill it in in active-ingredients.yaml, or name another material"));
        }
    }

    /** 40 CFR 156.64 (a)(1)(iv): category IV on every route needs no signal word. */
    private static boolean wordless(ActiveIngredient material) {
        return material.toxicity().map(toxicity -> toxicity.signalWord().isEmpty()).orElse(false);
    }

    private void require(Optional<?> fact, String what, String how, Placed<ActiveIngredient> placed,
            Consumer<Finding> found) {
        if (fact.isEmpty()) {
            found.accept(Finding.error(placed.at("id"), id(), "expected the " + what + " of "
                    + placed.value().name() + ", found none", "add '" + how + "'"));
        }
    }

    private void backwards(Optional<Interval> interval, String key, Placed<ActiveIngredient> placed,
            Consumer<Finding> found) {
        interval.filter(range -> range.from() < 0 || range.from() > range.to())
                .ifPresent(range -> found.accept(
                Finding.error(placed.at(key), id(), "expected a range from short to long, found "
                + range.from() + " to " + range.to(), "the shortest over all labels stands first")));
    }
}
