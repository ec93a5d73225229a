package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** A measure stands in the tier of its practice. */
final class PracticeInWrongTier implements PestRule {
    @Override
    public String id() {
        return "practice-in-wrong-tier";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (int i = 0; i < pest.value().controls().size(); i++) {
            int at = i;
            Control control = pest.value().controls().get(i);
            Controls.practice(control, base).filter(practice -> practice.tier() != control.tier())
                    .ifPresent(practice ->
                    found.accept(Finding.error(pest.at("controls", at, "practice"), id(),
                    "expected practice '"
                            + practice.id() + "' in tier " + practice.tier() + ", found it in tier "
                            + control.tier(),
                            "move the measure, or change the tier of the practice")));
        }
    }
}
