package org.fieldfold.check;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import org.fieldfold.entry.ActiveIngredient;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.Crop;
import org.fieldfold.entry.GrowthStage;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Threshold;
import org.fieldfold.scouting.season.WaitingTimes;
import org.fieldfold.source.Finding;

/**
 * Whoever is told to act in a crop's last stage, when it is picked, finds a material whose waiting times some
 * label lets pass within a week.
 */
final class NothingFitsBeforeHarvest implements PestRule {
    /** From a count to the next picking that may be put off, in days (common practice, no source). */
    private static final int WEEK = 7;
    /** Any day will do: only the distance counts. */
    private static final LocalDateTime USED = LocalDateTime.of(2000, 7, 1, 20, 0);

    @Override
    public String id() {
        return "nothing-fits-before-harvest";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        List<ActiveIngredient> materials = pest.value().controls().stream()
                .filter(control -> control.tier() == 3)
                .map(control -> base.materials().get(((Control.Insecticide) control).material()))
                .filter(Objects::nonNull).map(Placed::value).toList();
        if (materials.isEmpty() || materials.stream().anyMatch(NothingFitsBeforeHarvest::fits)) {
            return;
        }
        for (int i = 0; i < pest.value().thresholds().size(); i++) {
            Threshold threshold = pest.value().thresholds().get(i);
            if (isWhilePicked(pest.value(), threshold, base)) {
                found.accept(Finding.warning(pest.at("thresholds", i), id(),
                        "expected a material that some label lets harvest follow within " + WEEK
                        + " days, found that the shortest wait of those listed is " + materials.stream()
                        .mapToInt(material -> material.phiDays().orElseThrow().from()).min().orElseThrow()
                        + " days", "say in 'when:' that it is too late, or list a material that fits"));
            }
        }
    }

    /** Whether it may fit; one whose waiting times are not given is another rule's business. */
    private static boolean fits(ActiveIngredient material) {
        return material.waitingTimes().map(times -> times.before(USED.plusDays(WEEK), USED)
                != WaitingTimes.Fit.TOO_LATE).orElse(true);
    }

    private static boolean isWhilePicked(PestEntry entry, Threshold threshold, ContentBase base) {
        List<String> crops = threshold.crop().map(List::of).orElse(entry.crops());
        return threshold.metric().whyNoCard().isEmpty() && threshold.stages().isPresent()
                && crops.stream().map(base.crops()::get).filter(Objects::nonNull).map(Placed::value)
                        .map(Crop::stages).filter(stages -> !stages.isEmpty())
                        .map(stages -> stages.get(stages.size() - 1)).mapToInt(GrowthStage::from)
                        .anyMatch(from -> threshold.stages().get().from() >= from);
    }
}
