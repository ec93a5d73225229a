package org.fieldfold.entry;

import java.util.List;
import java.util.Optional;
import org.fieldfold.scouting.Metric;
import org.fieldfold.scouting.ThresholdFigure;

/** At what count it pays to act; or, with metric {@code none}, why there is no such number. */
public record Threshold(
        @Describe("short id within the entry") String id,
        @Describe("crop for which it holds") Optional<String> crop,
        @Describe("growth stages at which it holds, BBCH") Optional<StageWindow> stages,
        @Describe("those stages in words, as in 'before bloom'") @Translated Optional<String> when,
        @Describe("how it is measured") Metric metric,
        @Describe("the number, in the metric's unit; percent as 0 to 100") Optional<Double> value,
        @Describe("number of units to which a count refers: 50 beetles per 50 stems is per: 50")
        Optional<Integer> per,
        @Describe("days to which a trap's catch refers") Optional<Integer> days,
        @Describe("what is counted, as in 'adults' or 'plants with larvae'")
        @Translated Optional<String> counted,
        @Describe("id of the monitoring by which it is counted; leave out when there is one")
        Optional<String> monitoring,
        @Describe("ids of other pests that are counted together with this one") List<String> together,
        @Describe("rows of an interval table") List<ThresholdStep> steps,
        @Describe("for metric none: why there is no number") Optional<Text> reason,
        @Describe("a sentence that belongs to the number") Optional<Text> note,
        @Describe("plan by which the count may stop early") Optional<EarlyStop> stopEarly,
        @Describe("terms of the economic injury level behind the number") Optional<InjuryTerms> injuryLevel,
        @Describe("id of the source, which stands among those of the entry too") Optional<String> source,
        @Describe("for whom; leave out for everybody") List<Audience> audiences) {
    /**
     * Whether another threshold answers the same question: the same crop, stages, readers and thing counted.
     * Two that do, with different numbers, are sources that disagree.
     */
    public boolean asksTheSameAs(Threshold other) {
        return crop.equals(other.crop) && stages.equals(other.stages) && when.equals(other.when)
                && metric.isPercent() == other.metric.isPercent() && counted.equals(other.counted)
                && audiences.equals(other.audiences) && metric != Metric.NONE && other.metric != Metric.NONE;
    }

    /** The readers whose card is shown where one card serves all: the first named, or field growers. */
    public Audience mainAudience() {
        return audiences.stream().sorted().findFirst().orElse(Audience.FIELD);
    }

    /**
     * Its figures as scouting computes with them; empty when one that the metric needs is missing or
     * impossible.
     */
    public Optional<ThresholdFigure> figure() {
        try {
            return Optional.of(new ThresholdFigure(metric, metric.hasValue() ? value.orElse(Double.NaN) : 0,
                    per.orElse(metric.isPerUnits() ? 1 : 0), days.orElse(0)));
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }
}
