package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** A pest without a way to look for it: nobody could ever act on its threshold. */
final class NoMonitoring implements PestRule {
    @Override
    public String id() {
        return "no-monitoring";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        if (pest.value().monitoring().isEmpty()) {
            found.accept(Finding.error(pest.at("names"), id(),
                    "expected a way to look for this pest, found none",
                    "add 'monitoring:' with a method, a sampling unit and a sample size"));
        }
    }
}
