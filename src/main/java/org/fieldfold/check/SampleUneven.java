package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** A sample is divided evenly among its stops, and is not empty. */
final class SampleUneven implements PestRule {
    @Override
    public String id() {
        return "sample-uneven";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (int i = 0; i < pest.value().monitoring().size(); i++) {
            Monitoring look = pest.value().monitoring().get(i);
            if (look.plan().isEmpty()) {
                found.accept(Finding.error(pest.at("monitoring", i, look.stops().isPresent() ? "stops"
                        : "sample"), id(),
                        "expected a sample that divides evenly among its stops, found " + look.sample()
                        + " units at " + look.stops().map(String::valueOf).orElse("1") + " stops",
                        "change 'sample:' or 'stops:'"));
            }
        }
    }
}
