package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Threshold;
import org.fieldfold.scouting.sample.SampleSupport;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;

/** A sample is as sure at its threshold as is wanted, given how the pests lie. */
final class SampleUnsure implements PestRule {
    /** Worse than this, half the number, a count says little (our own limit, no source). */
    private static final double HALF = 0.5;

    @Override
    public String id() {
        return "sample-unsure";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (int i = 0; i < pest.value().thresholds().size(); i++) {
            Threshold threshold = pest.value().thresholds().get(i);
            Audience reader = threshold.audiences().isEmpty() ? Audience.FIELD : threshold.audiences().get(0);
            Optional<Monitoring> look = pest.value().monitoringOf(threshold, reader);
            Optional<SampleSupport> support = look.flatMap(how -> how.support(threshold));
            double wanted = look.flatMap(Monitoring::precision).orElse(HALF);
            if (support.isPresent() && support.get().precision() > wanted + 1e-9) {
                Severity severity = look.flatMap(Monitoring::precision).isPresent() ? Severity.WARNING
                        : Severity.INFO;
                found.accept(new Finding(severity, pest.at("thresholds", i, "value"), id(),
                        said(support.get(), wanted, look.orElseThrow()), hint(support.get())));
            }
        }
    }

    private static String said(SampleSupport support, double wanted, Monitoring look) {
        return "expected a standard error of at most " + percent(wanted) + " of the threshold, found "
                + percent(support.precision()) + " with " + look.sample() + " units";
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    private static String hint(SampleSupport support) {
        return support.unitsForQuarter() + " units would bring it to 25 %; or stop early by a plan, and "
                + "count a field that lies near the number again after two or three days";
    }
}
