package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** A guide has entries, and each of them harms one of its crops. */
final class GuideUnfit implements Rule {
    @Override
    public String id() {
        return "guide-unfit";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<Guide> placed : base.guides().values()) {
            Guide guide = placed.value();
            if (guide.entries().isEmpty()) {
                found.accept(Finding.error(placed.at("entries"), id(), "expected entries in this guide, found none",
                        "list the ids of pests under 'entries:'"));
            }
            for (int i = 0; i < guide.entries().size(); i++) {
                Placed<PestEntry> pest = base.pests().get(guide.entries().get(i));
                if (pest != null && pest.value().crops().stream().noneMatch(guide.crops()::contains)) {
                    found.accept(Finding.warning(placed.at("entries", i), id(), "expected a pest of "
                            + String.join(", ", guide.crops()) + ", found '" + pest.value().id() + "' of "
                            + String.join(", ", pest.value().crops()), "add the crop, or take the entry out"));
                }
            }
            if (guide.scouting().isEmpty()) {
                found.accept(Finding.error(placed.at("title"), id(), "expected lines on how to scout, found none",
                        "add 'scouting:'"));
            }
        }
    }
}
