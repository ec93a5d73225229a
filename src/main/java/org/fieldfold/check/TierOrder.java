package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/**
 * Measures stand in tier order in the file, as they do on paper (7 CFR 205.206: a material only when (a) to
 * (d) are insufficient).
 */
final class TierOrder implements PestRule {
    @Override
    public String id() {
        return "tier-order";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        int before = 0;
        for (int i = 0; i < pest.value().controls().size(); i++) {
            int tier = pest.value().controls().get(i).tier();
            if (tier < before) {
                found.accept(Finding.error(pest.at("controls", i, "tier"), id(),
                        "expected tier " + before + " or higher here, found tier " + tier + " behind tier "
                        + before,
                        "move this measure up, behind the others of tier " + tier));
            }
            before = Math.max(before, tier);
        }
    }
}
