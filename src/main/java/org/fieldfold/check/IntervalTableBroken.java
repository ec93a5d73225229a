package org.fieldfold.check;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.ThresholdStep;
import org.fieldfold.source.Finding;

/**
 * The rows of an interval table follow each other without a gap and without saying two things of one catch.
 */
final class IntervalTableBroken implements Rule {
    @Override
    public String id() {
        return "interval-table-broken";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<PestEntry> pest : base.pests().values()) {
            for (int i = 0; i < pest.value().thresholds().size(); i++) {
                List<ThresholdStep> steps = pest.value().thresholds().get(i).steps();
                for (int j = 0; j < steps.size(); j++) {
                    double from = steps.get(j).from();
                    boolean backwards = steps.get(j).to().map(to -> to <= from).orElse(false);
                    boolean apart = j > 0 && steps.get(j - 1).to().map(to -> to != from).orElse(true);
                    if (backwards || apart) {
                        found.accept(Finding.error(pest.at("thresholds", i, "steps", j), id(),
                                "expected a row that begins "
                                + "where the one before ends, found from " + Words.of(from) + " to "
                                + steps.get(j).to().map(Words::of).orElse("the end"),
                                "each row runs from its 'from' up to, but not including, its 'to'"));
                    }
                }
            }
        }
    }
}
