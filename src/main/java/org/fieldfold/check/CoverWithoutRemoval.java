package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Pollination;
import org.fieldfold.source.Finding;

/**
 * A cover that keeps pests out keeps pollinators out: on a crop that needs insects it says when it comes off
 * (common practice, no source).
 */
final class CoverWithoutRemoval implements PestRule {
    @Override
    public String id() {
        return "cover-without-removal";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        boolean needsInsects = pest.value().crops().stream()
                .anyMatch(crop -> Optional.ofNullable(base.crops().get(crop))
                .map(known -> known.value().pollination() == Pollination.INSECTS).orElse(false));
        Controls.covers(pest.value(), base).forEach((i, cover) -> {
            if (needsInsects && cover.comesOff().isEmpty()) {
                found.accept(Finding.error(pest.at("controls", i), id(),
                        "expected when the cover comes off for a crop that "
                        + "insects pollinate, found nothing",
                        "add 'comes-off:', as in 'Take it off at the first flowers.'"));
            }
        });
    }
}
