package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Threshold;
import org.fieldfold.scouting.Metric;
import org.fieldfold.source.Finding;

/**
 * A number without what it refers to is no threshold: value, unit, stage, sampling unit and source belong
 * together.
 */
final class ThresholdIncomplete implements PestRule {
    @Override
    public String id() {
        return "threshold-incomplete";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        PestEntry entry = pest.value();
        for (int i = 0; i < entry.thresholds().size(); i++) {
            Threshold threshold = entry.thresholds().get(i);
            int at = i;
            BiConsumer<String, String> say = (missing, hint) ->
                    found.accept(Finding.error(pest.at("thresholds", at),
                    id(), "threshold '" + threshold.id() + "': expected " + missing + ", found none", hint));
            if (threshold.metric() == Metric.NONE) {
                continue;
            }
            if (threshold.metric().hasValue() && threshold.value().isEmpty()) {
                say.accept("a value", "add 'value:' in the unit of the metric; percent as 0 to 100");
            } else if (threshold.figure().isEmpty()) {
                found.accept(Finding.error(pest.at("thresholds", i, "value"), id(), "threshold '"
                        + threshold.id()
                        + "': expected figures that fit metric " + Words.of(threshold.metric()) + ", found "
                        + figures(threshold), "a value above 0, percent up to 100; 'per:' units; 'days:' for "
                        + "a trap"));
            }
            if (threshold.metric() == Metric.COUNT_PER_SAMPLE && threshold.per().isEmpty()) {
                say.accept("the number of units that the count refers to",
                        "add 'per:', as in 50 beetles per 50 stems");
            }
            if (threshold.metric() == Metric.INTERVAL_TABLE && threshold.steps().isEmpty()) {
                say.accept("the rows of the table", "add 'steps:'");
            }
            if (threshold.metric() != Metric.ANY_PRESENT && threshold.metric() != Metric.DEGREE_DAYS
                    && threshold.counted().isEmpty()) {
                say.accept("what is counted", "add 'counted:', as in 'adults' or 'plants with larvae'");
            }
            if (threshold.stages().isEmpty() && threshold.metric() != Metric.DEGREE_DAYS) {
                say.accept("the growth stages at which it holds",
                        "add 'stages: {from: 10, to: 49}' in BBCH codes");
            }
            if (threshold.source().isEmpty()) {
                say.accept("a source", "add 'source:' with an id from sources.yaml");
            }
            if (threshold.metric().whyNoCard().isEmpty() && entry.monitoring().stream()
                    .noneMatch(look -> threshold.monitoring().map(look.id()::equals).orElse(true))) {
                say.accept("the monitoring by which it is counted",
                        "add 'monitoring:' with the id of one in this entry");
            }
        }
    }

    private static String figures(Threshold threshold) {
        return "value " + threshold.value().map(Words::of).orElse("none") + ", per "
                + threshold.per().map(String::valueOf).orElse("none") + ", days "
                + threshold.days().map(String::valueOf).orElse("none");
    }
}
