package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.InjuryTerms;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Price;
import org.fieldfold.entry.Threshold;
import org.fieldfold.scouting.ThresholdFigure;
import org.fieldfold.scouting.decision.InjuryLevel;
import org.fieldfold.source.Finding;

/** A printed threshold that leans on prices is still the one that this year's prices give. */
final class ThresholdMoved implements PestRule {
    /** A smaller change than this drowns in what a sample can show (our own limit, no source). */
    private static final double TENTH = 0.1;

    @Override
    public String id() {
        return "threshold-moved";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (int i = 0; i < pest.value().thresholds().size(); i++) {
            Threshold threshold = pest.value().thresholds().get(i);
            int at = i;
            threshold.figure().map(ThresholdFigure::value).filter(printed -> printed > 0)
                    .ifPresent(printed -> threshold.injuryLevel().ifPresent(terms ->
                            terms.actAt(base.prices()).ifPresent(now -> {
                                double moved = InjuryLevel.moved(printed, now);
                                if (Math.abs(moved) > TENTH + 1e-9) {
                                    found.accept(Finding.warning(pest.at("thresholds", at, "value"), id(),
                                            said(printed, now, moved, terms, base),
                                            "print the new number with a note, or correct the prices"));
                                }
                            })));
        }
    }

    private static String said(double printed, double now, double moved, InjuryTerms terms,
            ContentBase base) {
        return "expected the number that today's prices give, " + Words.rounded(now) + ", found "
                + Words.of(printed) + "; it should move by " + (moved > 0 ? "+" : "")
                + Words.rounded(moved * 100) + " % at " + price(base, terms.cost()) + " and "
                + price(base, terms.value());
    }

    private static String price(ContentBase base, String id) {
        Price price = base.prices().get(id).value();
        return Words.of(price.value()) + " " + price.unit();
    }
}
