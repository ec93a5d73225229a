package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.EarlyStop;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Threshold;
import org.fieldfold.scouting.CountCard;
import org.fieldfold.scouting.ThresholdFigure;
import org.fieldfold.scouting.sequential.SequentialPlan;
import org.fieldfold.scouting.sequential.StopRow;
import org.fieldfold.scouting.sequential.StopTable;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/** A plan by which a count may stop early does what it declares, and decides as the whole count would. */
final class StopEarlyUnfit implements PestRule {
    /** The most units that anybody would be asked to look at. */
    private static final int MOST_UNITS = 200;

    @Override
    public String id() {
        return "stop-early-unfit";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (int i = 0; i < pest.value().thresholds().size(); i++) {
            Threshold threshold = pest.value().thresholds().get(i);
            if (threshold.stopEarly().isPresent()) {
                check(pest, threshold, pest.at("thresholds", i, "stop-early"), found);
            }
        }
    }

    private void check(Placed<PestEntry> pest, Threshold threshold, Span span, Consumer<Finding> found) {
        EarlyStop stop = threshold.stopEarly().orElseThrow();
        SequentialPlan plan;
        try {
            plan = stop.exactPlan();
        } catch (IllegalArgumentException impossible) {
            found.accept(Finding.error(span, id(), "expected a plan that can be worked out, found that "
                    + impossible.getMessage(), "let-be lies below act, alpha and beta are chances above 0, "
                    + "max lies whole steps above min, and k above 0 belongs to negative-binomial"));
            return;
        }
        Optional<String> refusal = plan.refusal();
        if (refusal.isPresent()) {
            OptionalInt least = plan.leastMaximum(Math.max(plan.min(), MOST_UNITS));
            found.accept(Finding.error(span, id(), "expected a table that keeps to the declared chances, found "
                    + "that " + refusal.get(), least.isPresent()
                    ? "'max: " + least.getAsInt() + "' would hold it; or move let-be and act apart"
                    : "move let-be and act apart, or declare larger chances"));
        } else {
            density(threshold, stop).filter(density -> density < stop.letBe() || density > stop.act())
                    .ifPresent(density -> found.accept(Finding.warning(span, id(),
                            "expected the threshold between let-be and act, found " + Words.of(density)
                            + " outside " + Words.of(stop.letBe()) + " to " + Words.of(stop.act()),
                            "set both around the threshold, in its own unit")));
            decidesAlike(pest.value(), threshold, plan.draft(), span, found);
        }
    }

    /** The threshold in the plan's unit: percent of the units, or pests a unit. */
    private static Optional<Double> density(Threshold threshold, EarlyStop stop) {
        return threshold.figure().filter(figure -> figure.metric().hasValue()).map(figure ->
                figure.metric().isPercent() ? figure.value()
                : perUnit(figure) * (stop.countsUnitsWithPest() ? 100 : 1));
    }

    private static double perUnit(ThresholdFigure figure) {
        return figure.value() / Math.max(1, figure.per());
    }

    private void decidesAlike(PestEntry entry, Threshold threshold, StopTable table, Span span,
            Consumer<Finding> found) {
        Audience reader = threshold.audiences().isEmpty() ? Audience.FIELD : threshold.audiences().get(0);
        Optional<CountCard> card = entry.cardOf(threshold, reader);
        StopRow last = table.rows().get(table.rows().size() - 1);
        if (card.isPresent() && card.get().lookAt() == table.max()
                && card.get().actAt() != last.stopHigh().orElseThrow()) {
            found.accept(Finding.warning(span, id(), "expected the largest sample to act at "
                    + card.get().actAt() + " as the count card does, found "
                    + last.stopHigh().getAsInt(),
                    "set let-be and act so that the middle of the lines meets the threshold"));
        }
    }
}
