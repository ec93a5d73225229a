package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/**
 * A material is used on a condition, never as a matter of course (7 CFR 205.206 (e): conditions for use are
 * documented).
 */
final class InsecticideWithoutCondition implements PestRule {
    @Override
    public String id() {
        return "insecticide-without-condition";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Controls.insecticides(pest.value()).forEach((i, use) -> {
            if (use.when().isEmpty()) {
                found.accept(Finding.error(pest.at("controls", i), id(), "expected the condition under which "
                        + use.material() + " is used, found none",
                        "add 'when:', as in 'only past the count'"));
            }
        });
    }
}
