package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Threshold;
import org.fieldfold.scouting.Metric;
import org.fieldfold.source.Finding;

/** A threshold is either given or declared to be none, with the reason. */
final class ThresholdMissing implements PestRule {
    @Override
    public String id() {
        return "threshold-missing";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        PestEntry entry = pest.value();
        if (entry.thresholds().isEmpty()) {
            found.accept(Finding.error(pest.at("names"), id(),
                    "expected a threshold, or one declared none, found neither",
                    "add 'thresholds:'; where there is no number, 'metric: none' with a 'reason:'"));
        }
        for (int i = 0; i < entry.thresholds().size(); i++) {
            Threshold threshold = entry.thresholds().get(i);
            if (threshold.metric() == Metric.NONE && threshold.reason().isEmpty()) {
                found.accept(Finding.error(pest.at("thresholds", i, "metric"), id(),
                        "expected the reason why there is no number, found none",
                        "add 'reason:' in a sentence"));
            }
        }
    }
}
