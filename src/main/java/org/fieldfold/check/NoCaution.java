package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** Cautions stand next to every insecticide. */
final class NoCaution implements PestRule {
    @Override
    public String id() {
        return "no-caution";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        if (!Controls.insecticides(pest.value()).isEmpty() && pest.value().cautions().isEmpty()) {
            found.accept(Finding.error(pest.at("controls"), id(),
                    "expected a caution beside the insecticides of this entry, found none", "add 'cautions:'"));
        }
    }
}
