package org.fieldfold.check;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/**
 * Before anything is counted it is named: which crops a pest harms, what it looks like and what it does to
 * them.
 */
final class DescriptionMissing implements Rule {
    @Override
    public String id() {
        return "description-missing";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<PestEntry> pest : base.pests().values()) {
            require(pest, pest.value().crops(), "the crops that it harms", "crops: [potato]", found);
            require(pest, pest.value().stages(), "what it looks like", "stages:", found);
            require(pest, pest.value().damage(), "what it does to the crop", "damage:", found);
        }
        base.enemies().values().forEach(enemy ->
                require(enemy, enemy.value().stages(), "what it looks like", "stages:", found));
    }

    private void require(Placed<?> placed, List<?> facts, String what, String how, Consumer<Finding> found) {
        if (facts.isEmpty()) {
            found.accept(Finding.error(placed.at("names"), id(), "expected " + what + ", found nothing",
                    "add '" + how + "'"));
        }
    }
}
