package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Threshold;
import org.fieldfold.scouting.CountCard;
import org.fieldfold.scouting.Metric;
import org.fieldfold.source.Finding;

/**
 * Rounding up to a whole count must not move the threshold by more than half: else the sample cannot show it.
 */
final class SampleTooSmall implements PestRule {
    @Override
    public String id() {
        return "sample-too-small";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        PestEntry entry = pest.value();
        for (int i = 0; i < entry.thresholds().size(); i++) {
            Threshold threshold = entry.thresholds().get(i);
            if (threshold.metric() == Metric.ANY_PRESENT) {
                continue;
            }
            Audience reader = threshold.audiences().isEmpty() ? Audience.FIELD : threshold.audiences().get(0);
            Optional<CountCard> card = entry.cardOf(threshold, reader);
            if (card.isPresent() && card.get().overshoot() > 0.5) {
                found.accept(Finding.warning(pest.at("thresholds", i, "value"), id(),
                        "expected a sample that can show this "
                        + "threshold, found " + card.get().lookAt() + " units, for which "
                        + Words.of(card.get().exact())
                        + " becomes " + card.get().actAt(), "look at more units"));
            }
        }
    }
}
