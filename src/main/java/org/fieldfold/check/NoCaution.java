package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/** Cautions stand next to every insecticide, and on every guide. */
final class NoCaution implements Rule {
    @Override
    public String id() {
        return "no-caution";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        if (base.edition().value().cautions().isEmpty()) {
            found.accept(Finding.error(base.edition().at("cautions"), id(),
                    "expected cautions for every guide of the edition, found none",
                    "add 'cautions:'; the first says that the label on the container is the law"));
        }
        base.pests().values().forEach(pest -> {
            if (!Controls.insecticides(pest.value()).isEmpty() && pest.value().cautions().isEmpty()) {
                found.accept(Finding.error(pest.at("controls"), id(),
                        "expected a caution beside the insecticides of this entry, found none",
                        "write one under 'cautions:'"));
            }
        });
    }
}
