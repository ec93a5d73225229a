package org.fieldfold.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** What an office leaves out of its copies leaves guides that still hold what they promise. */
final class OfficeLeavesOut implements Rule {
    @Override
    public String id() {
        return "office-leaves-out";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<Office> placed : base.offices().values()) {
            Office office = placed.value();
            List<Guide> guides = base.guides().values().stream().map(Placed::value)
                    .filter(guide -> office.guides().isEmpty() || office.guides().contains(guide.id()))
                    .toList();
            for (int i = 0; i < office.leaveOut().size(); i++) {
                String entry = office.leaveOut().get(i);
                List<Guide> with = guides.stream().filter(guide -> guide.entries().contains(entry)).toList();
                if (with.isEmpty() && base.pests().containsKey(entry)) {
                    found.accept(Finding.info(placed.at("leave-out", i), id(),
                            "expected an entry of the guides "
                            + "that this office hands out, found '" + entry + "', which is in none of them",
                            "take it out of the list"));
                }
                for (Guide guide : with) {
                    Optional<Finding> finding = missed(guide, office, entry, base, placed, i);
                    finding.ifPresent(found);
                }
            }
        }
    }

    /** The gravest thing that a guide lacks without an entry. */
    private Optional<Finding> missed(Guide whole, Office office, String entry, ContentBase base,
            Placed<Office> placed, int i) {
        Guide kept = office.keeps(whole);
        if (kept.entries().isEmpty()) {
            return Optional.of(Finding.error(placed.at("leave-out", i), id(),
                    "expected something left of guide '"
                    + whole.id() + "', found all its entries left out",
                    "name under 'guides:' those that this office hands out"));
        }
        Optional<String> partner = pests(kept, base).filter(pest -> pest.thresholds().stream()
                .anyMatch(threshold -> threshold.together().contains(entry))).map(PestEntry::id).findFirst();
        if (partner.isPresent()) {
            return Optional.of(Finding.error(placed.at("leave-out", i), id(), "expected '" + entry
                    + "' beside '" + partner.get() + "' in guide '" + whole.id()
                    + "', found it left out, though both are counted together", "leave out both or neither"));
        }
        return whole.crops().stream().filter(crop -> base.pests().containsKey(entry)
                && base.pests().get(entry).value().crops().contains(crop)
                && pests(kept, base).noneMatch(pest -> pest.crops().contains(crop))).findFirst()
                .map(crop -> Finding.warning(placed.at("leave-out", i), id(),
                        "expected an entry for crop '" + crop + "' in guide '" + whole.id() + "', found none but '"
                        + entry + "', which is left out",
                        "keep it, or do not hand out the guide"));
    }

    private static Stream<PestEntry> pests(Guide guide, ContentBase base) {
        return guide.entries().stream().map(base.pests()::get).filter(Objects::nonNull).map(Placed::value);
    }
}
