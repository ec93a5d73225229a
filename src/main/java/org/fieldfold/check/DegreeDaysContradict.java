package org.fieldfold.check;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.DegreeDayEvent;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Season;
import org.fieldfold.source.Finding;

/** A lower threshold lies below the upper one, and a sum is above 0. */
final class DegreeDaysContradict implements PestRule {
    @Override
    public String id() {
        return "degree-days-contradict";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (int i = 0; i < pest.value().monitoring().size(); i++) {
            List<DegreeDayEvent> events = pest.value().monitoring().get(i).season().map(Season::events)
                    .orElse(List.of());
            for (int j = 0; j < events.size(); j++) {
                DegreeDayEvent event = events.get(j);
                if (!(event.sum() > 0) || event.upper().map(upper -> upper <= event.lower()).orElse(false)) {
                    found.accept(Finding.error(pest.at("monitoring", i, "season", "events", j), id(),
                            "expected a sum above 0 "
                            + "and a lower threshold below the upper, found sum " + Words.of(event.sum())
                            + ", lower " + Words.of(event.lower()) + ", upper " + event.upper().map(Words::of)
                            .orElse("none"),
                            "all three are in the event's own unit"));
                } else if (event.model().isEmpty()) {
                    found.accept(Finding.error(pest.at("monitoring", i, "season", "events", j), id(),
                            "expected a method that knows the cutoff, found "
                            + event.method().map(Words::of).orElse("none") + " with cutoff "
                            + event.cutoff().map(Words::of).orElse("none"),
                            "an average knows only 'horizontal'; a sine or a triangle knows all"));
                } else if (event.start().isPresent() == event.biofix().isPresent()) {
                    found.accept(Finding.error(pest.at("monitoring", i, "season", "events", j), id(),
                            "expected either "
                            + "'start:' or 'biofix:', found "
                            + (event.start().isPresent() ? "both" : "neither"),
                            "a sum runs from a date or from what is seen, not from both"));
                }
            }
        }
    }
}
