package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
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
                        "expected the measures in tier order, 1, 2, 3, found tier " + tier + " behind tier "
                        + before, "move this measure up, before the first of tier " + later(pest.value(), tier)));
            }
            before = Math.max(before, tier);
        }
    }

    /** The tier of the first measure that should stand behind one of a tier. */
    private static int later(PestEntry pest, int tier) {
        return pest.controls().stream().mapToInt(Control::tier).filter(other -> other > tier).findFirst()
                .orElseThrow();
    }
}
