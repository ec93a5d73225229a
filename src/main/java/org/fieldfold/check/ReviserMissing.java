package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Reviewed;
import org.fieldfold.source.Finding;

/** Somebody stands behind every text. */
final class ReviserMissing implements Rule {
    @Override
    public String id() {
        return "reviser-missing";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<? extends Reviewed> placed : base.reviewed()) {
            if (placed.value().reviser().isEmpty()) {
                found.accept(Finding.error(placed.at("revised"), id(), "expected who re-read '"
                        + placed.value().id()
                        + "', found nobody", "when the rest is right, re-read it; 'fieldfold sign "
                        + placed.value().id()
                        + " --by REVIEWER' then writes who and when"));
            }
        }
    }
}
