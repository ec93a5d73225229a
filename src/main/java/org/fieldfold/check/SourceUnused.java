package org.fieldfold.check;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import org.fieldfold.entry.BodyWidth;
import org.fieldfold.entry.BorderSize;
import org.fieldfold.entry.Clumping;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.EarlyStop;
import org.fieldfold.entry.InjuryTerms;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.PerArea;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Practice;
import org.fieldfold.entry.SeasonRotation;
import org.fieldfold.entry.Threshold;
import org.fieldfold.entry.TunnelSizes;
import org.fieldfold.source.Finding;

/** A source that nothing leans on is left over from something that was cut. */
final class SourceUnused implements Rule {
    @Override
    public String id() {
        return "source-unused";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        if (!base.unread().isEmpty()) {
            return; // an entry that could not be read may lean on it
        }
        Set<String> used = new HashSet<>();
        base.reviewed().forEach(placed -> used.addAll(placed.value().sources()));
        base.materials().values().forEach(material -> used.addAll(material.value().sources()));
        base.pests().values().forEach(pest -> inEntry(pest.value(), used::add));
        base.prices().values().forEach(price -> price.value().source().ifPresent(used::add));
        base.practices().values().forEach(practice -> inPractice(practice.value(), used::add));
        base.sources().forEach((id, source) -> {
            if (!used.contains(id)) {
                found.accept(Finding.warning(source.at("id"), id(),
                        "expected something that leans on source '" + id
                        + "', found nothing", "name it in an entry, or take it out"));
            }
        });
    }

    private static void inEntry(PestEntry entry, Consumer<String> used) {
        for (Monitoring look : entry.monitoring()) {
            look.season().ifPresent(season ->
                    season.events().forEach(event -> event.source().ifPresent(used)));
            look.dispersion().flatMap(Clumping::source).ifPresent(used);
            look.perArea().flatMap(PerArea::source).ifPresent(used);
        }
        for (Threshold threshold : entry.thresholds()) {
            threshold.stopEarly().flatMap(EarlyStop::source).ifPresent(used);
            threshold.injuryLevel().flatMap(InjuryTerms::source).ifPresent(used);
        }
        entry.stages().forEach(stage -> stage.bodyWidth().flatMap(BodyWidth::source).ifPresent(used));
        entry.rotation().flatMap(SeasonRotation::source).ifPresent(used);
    }

    private static void inPractice(Practice practice, Consumer<String> used) {
        practice.nets().forEach(net -> net.source().ifPresent(used));
        practice.tunnel().flatMap(TunnelSizes::source).ifPresent(used);
        practice.border().flatMap(BorderSize::source).ifPresent(used);
        practice.perArea().flatMap(PerArea::source).ifPresent(used);
    }
}
