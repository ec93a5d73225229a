package org.fieldfold.entry;

import java.util.List;
import java.util.Optional;
import org.fieldfold.scouting.Metric;
import org.fieldfold.scouting.SamplingPlan;
import org.fieldfold.scouting.Walk;
import org.fieldfold.scouting.sample.Confidence;
import org.fieldfold.scouting.sample.Dispersion;
import org.fieldfold.scouting.sample.SampleSupport;

/** How one looks for a pest. */
public record Monitoring(
        @Describe("short id, so that a threshold can name this count") String id,
        @Describe("method, from the fixed vocabulary") MonitoringMethod method,
        @Describe("sampling unit: what one looks at, one by one") SamplingUnit unit,
        @Describe("how many units are looked at in all") int sample,
        @Describe("way through the field") Optional<Walk> walk,
        @Describe("at how many stops; the sample is divided evenly among them") Optional<Integer> stops,
        @Describe("days between two looks") Optional<Integer> everyDays,
        @Describe("when to look") Optional<Season> season,
        @Describe("how the pests lie over the units") Optional<Clumping> dispersion,
        @Describe("wanted standard error as a share of the mean; 0.25 is usual") Optional<Double> precision,
        @Describe("traps, or stops where no traps are used, for an area") Optional<PerArea> perArea,
        @Describe("how it is done, in a sentence or two") Text how,
        @Describe("for whom; leave out for everybody") List<Audience> audiences) {
    /** How sure this sample is at a threshold; for means only where it is known how the pests lie. */
    public Optional<SampleSupport> support(Threshold threshold) {
        Optional<Dispersion> known = dispersion.flatMap(Clumping::dispersion);
        return threshold.figure()
                .filter(figure -> known.isPresent() || figure.metric() == Metric.PERCENT_INFESTED)
                .flatMap(figure -> plan().flatMap(plan -> SampleSupport.of(figure, plan,
                        known.orElse(new Dispersion.Random()), Confidence.PERCENT_95)));
    }

    /**
     * The sample as scouting computes with it; empty when its figures contradict each other, which is a
     * check's business to say.
     */
    public Optional<SamplingPlan> plan() {
        int places = stops.orElse(1);
        if (sample < 1 || places < 1 || sample % places != 0 || everyDays.orElse(0) < 0) {
            return Optional.empty();
        }
        return Optional.of(new SamplingPlan(unit.name(), sample, walk.orElse(Walk.ROWS), places,
                sample / places, everyDays.orElse(0)));
    }
}
