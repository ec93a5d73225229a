package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Threshold;
import org.fieldfold.source.Finding;

/** Two sources that give different numbers for one question are shown side by side. */
final class SourcesDisagree implements PestRule {
    @Override
    public String id() {
        return "sources-disagree";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        PestEntry entry = pest.value();
        for (int i = 0; i < entry.thresholds().size(); i++) {
            Threshold later = entry.thresholds().get(i);
            for (Threshold earlier : entry.thresholds().subList(0, i)) {
                if (earlier.asksTheSameAs(later) && !earlier.figure().equals(later.figure())) {
                    found.accept(Finding.info(pest.at("thresholds", i, "value"), id(), "'" + later.id()
                            + "' (" + later.source().orElse("no source") + ") and '" + earlier.id() + "' ("
                            + earlier.source().orElse("no source")
                            + ") answer the same question differently: "
                            + later.value().map(Words::of).orElse("none") + " and "
                            + earlier.value().map(Words::of).orElse("none"),
                            "the pocket prints the one that stands first; the handbook shows both"));
                }
            }
        }
    }
}
