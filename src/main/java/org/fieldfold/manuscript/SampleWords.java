package org.fieldfold.manuscript;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Threshold;
import org.fieldfold.prose.Run;
import org.fieldfold.scouting.Metric;
import org.fieldfold.scouting.SamplingPlan;
import org.fieldfold.scouting.WholeCount;
import org.fieldfold.scouting.sample.SampleSupport;
import org.fieldfold.source.Span;

/** Says how sure a count is: what a field that stands exactly at the number shows on this sample. */
final class SampleWords {
    private final PestEntry entry;
    private final Phrases phrases;

    SampleWords(PestEntry entry, Phrases phrases) {
        this.entry = entry;
        this.phrases = phrases;
    }

    /** A sentence for a threshold; none where nothing is known. */
    List<Block> of(Threshold threshold, Monitoring look, Span origin) {
        Optional<SampleSupport> support = look.support(threshold);
        Optional<SamplingPlan> plan = look.plan();
        if (support.isEmpty() || plan.isEmpty()) {
            return List.of();
        }
        double scale = plan.get().size() / (threshold.metric() == Metric.PERCENT_INFESTED ? 100.0 : 1);
        String unit = phrases.count("unit." + look.unit().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                plan.get().size());
        String sentence = phrases.say("sure.shows", plan.get().size(), unit,
                WholeCount.up(support.get().likely().low() * scale),
                WholeCount.down(support.get().likely().high() * scale),
                threshold.counted().orElse(entry.names().common()),
                Math.round(support.get().precision() * 100));
        String more = support.get().unitsForQuarter() > plan.get().size()
                ? " " + phrases.say("sure.more", support.get().unitsForQuarter()) : "";
        return List.of(new Block.Paragraph(List.of(Run.plain(sentence + more)), List.of(), origin));
    }
}
