package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/**
 * Prevention first, then barriers and natural enemies: an entry has a measure in tier 1 and in tier 2 (7 CFR
 * 205.206 (a), (b)).
 */
final class TierMissing implements PestRule {
    @Override
    public String id() {
        return "tier-missing";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (int tier = 1; tier <= 2; tier++) {
            int wanted = tier;
            if (pest.value().controls().stream().noneMatch(control -> control.tier() == wanted)) {
                found.accept(Finding.error(pest.at("controls"), id(),
                        "expected a measure in tier " + tier + ", found none",
                        tier == 1 ? "say how the crop is grown so that this pest matters less"
                                : "say what keeps it out, takes it off or eats it"));
            }
        }
    }
}
