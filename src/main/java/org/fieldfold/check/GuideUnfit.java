package org.fieldfold.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/**
 * A guide has crops and entries that belong together, says how to scout, and may be set in some size of type.
 */
final class GuideUnfit implements Rule {
    @Override
    public String id() {
        return "guide-unfit";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<Guide> placed : base.guides().values()) {
            Guide guide = placed.value();
            require(placed, guide.crops(), "crops", "crops of this guide",
                    "list ids of crops under 'crops:'", found);
            require(placed, guide.entries(), "entries", "entries in this guide",
                    "list ids of pests under 'entries:'", found);
            require(placed, guide.scouting(), "scouting", "lines on how to scout", "add 'scouting:'", found);
            entries(placed, base, found);
            crops(placed, base, found);
            guide.type().filter(type -> type.from() > type.to()).ifPresent(type -> found.accept(Finding.error(
                    placed.at("type"), id(), "expected sizes of type from small to large, found "
                    + Words.of(type.from()) + " to " + Words.of(type.to()), "both are in points")));
        }
    }

    private void require(Placed<Guide> placed, List<?> facts, String key, String what, String how,
            Consumer<Finding> found) {
        if (facts.isEmpty()) {
            found.accept(Finding.error(placed.at(key), id(), "expected " + what + ", found none", how));
        }
    }

    private void entries(Placed<Guide> placed, ContentBase base, Consumer<Finding> found) {
        Guide guide = placed.value();
        for (int i = 0; i < guide.entries().size(); i++) {
            Placed<PestEntry> pest = base.pests().get(guide.entries().get(i));
            if (pest != null && pest.value().crops().stream().noneMatch(guide.crops()::contains)) {
                found.accept(Finding.warning(placed.at("entries", i), id(), "expected a pest of "
                        + String.join(", ", guide.crops()) + ", found '" + pest.value().id() + "' of "
                        + String.join(", ", pest.value().crops()), "add the crop, or take the entry out"));
            }
            if (guide.entries().subList(0, i).contains(guide.entries().get(i))) {
                found.accept(Finding.error(placed.at("entries", i), id(), "expected each entry once, found '"
                        + guide.entries().get(i) + "' again", "take one of the two out"));
            }
        }
    }

    private void crops(Placed<Guide> placed, ContentBase base, Consumer<Finding> found) {
        Guide guide = placed.value();
        List<PestEntry> pests = guide.entries().stream().map(base.pests()::get).filter(Objects::nonNull)
                .map(Placed::value).toList();
        for (int i = 0; i < guide.crops().size(); i++) {
            String crop = guide.crops().get(i);
            // an entry that could not be read may be the one that harms it
            if (pests.size() == guide.entries().size() && pests.stream()
                    .noneMatch(pest -> pest.crops().contains(crop))) {
                found.accept(Finding.warning(placed.at("crops", i), id(), "expected an entry that harms "
                        + crop + ", found none", "take the crop out, or add an entry"));
            }
        }
    }
}
