package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ActiveIngredient;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Reviewed;
import org.fieldfold.source.Finding;

/** Every text names what it leans on, and every threshold's source is among them. */
final class SourceMissing implements Rule {
    @Override
    public String id() {
        return "source-missing";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<? extends Reviewed> placed : base.reviewed()) {
            if (placed.value().sources().isEmpty()) {
                found.accept(Finding.error(placed.at("sources"), id(), "expected sources of '"
                        + placed.value().id()
                        + "', found none", "add 'sources:' with ids from sources.yaml"));
            }
        }
        for (Placed<PestEntry> pest : base.pests().values()) {
            for (int i = 0; i < pest.value().thresholds().size(); i++) {
                int at = i;
                pest.value().thresholds().get(i).source()
                        .filter(source -> base.sources().containsKey(source) // others are unknown-reference
                                && !pest.value().sources().contains(source))
                        .ifPresent(source -> found.accept(Finding.error(pest.at("thresholds", at, "source"),
                                id(), "expected '" + source + "' among the sources of this entry, found "
                                + String.join(", ", pest.value().sources()),
                                "add it to 'sources:' as well")));
            }
        }
        for (Placed<ActiveIngredient> material : base.materials().values()) {
            if (material.value().sources().isEmpty()) {
                found.accept(Finding.error(material.at("sources"), id(), "expected sources of material '"
                        + material.value().id() + "', found none",
                        "add 'sources:' with ids from sources.yaml"));
            }
        }
    }
}
