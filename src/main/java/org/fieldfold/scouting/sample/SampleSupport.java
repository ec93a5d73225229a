package org.fieldfold.scouting.sample;

import java.util.Optional;
import org.fieldfold.scouting.Expect;
import org.fieldfold.scouting.Metric;
import org.fieldfold.scouting.SamplingPlan;
import org.fieldfold.scouting.ThresholdFigure;
import org.fieldfold.scouting.WholeCount;

/**
 * What an entry's sample can say in a field that stands exactly at the threshold.
 *
 * @param precision standard error as a share of the threshold; 0.25 is what scouting usually asks for
 * @param likely what the sample is expected to show, in the metric's unit (percent as 0 to 100, mean per
 *     unit)
 * @param unitsForQuarter units needed for a precision of 0.25
 * @param canShow whether the threshold comes to at least one on the whole sample
 */
public record SampleSupport(double precision, Interval likely, int unitsForQuarter, boolean canShow) {
    private static final double QUARTER = 0.25;

    /**
     * @param dispersion how counts scatter; not used for percent infested, where the share itself says it
     * @return empty for metrics that are not a mean or a share of the sample
     */
    public static Optional<SampleSupport> of(ThresholdFigure figure, SamplingPlan plan, Dispersion dispersion,
            Confidence confidence) {
        if (figure.metric() == Metric.PERCENT_INFESTED) {
            return Optional.of(ofShare(figure.value() / 100, plan.size(), confidence));
        }
        return figure.metric().isPerUnits()
                ? Optional.of(ofMean(figure.value() / figure.per(), plan.size(), dispersion, confidence))
                : Optional.empty();
    }

    private static SampleSupport ofShare(double share, int units, Confidence confidence) {
        Interval shares = Interval.wilson(share * units, units, confidence.z());
        // at 100 percent every unit has it, and one unit shows that
        int needed = share < 1 ? WholeCount.up(ShareSample.relative(share, QUARTER)) : 1;
        return new SampleSupport(Math.sqrt((1 - share) / (share * units)),
                new Interval(shares.low() * 100, shares.high() * 100), Math.max(1, needed),
                share * units >= 1 - 1e-9);
    }

    private static SampleSupport ofMean(double mean, int units, Dispersion dispersion,
            Confidence confidence) {
        Expect.above(0, mean, "threshold per unit");
        double reach = dispersion.precision(mean, units, confidence.z()) * mean;
        return new SampleSupport(dispersion.precision(mean, units, 1),
                new Interval(Math.max(0, mean - reach), mean + reach),
                Math.max(1, WholeCount.up(dispersion.unitsForMean(mean, QUARTER, 1))),
                mean * units >= 1 - 1e-9);
    }
}
