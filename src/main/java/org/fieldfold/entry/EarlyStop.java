package org.fieldfold.entry;

import java.util.Optional;
import org.fieldfold.scouting.Expect;
import org.fieldfold.scouting.sequential.AtMaximum;
import org.fieldfold.scouting.sequential.CountModel;
import org.fieldfold.scouting.sequential.SequentialPlan;
import org.fieldfold.scouting.sequential.StopLines;

/** A plan by which a count may stop early: both densities, the two risks, and how many are looked at. */
public record EarlyStop(
        @Describe("how counts scatter: binomial where a unit has the pest or not, poisson where pests lie at "
        + "random, negative-binomial where they lie in clumps") Scatter model,
        @Describe("k of the negative binomial; the smaller, the stronger the clumps") Optional<Double> k,
        @Describe("density at which acting would be wrong: percent of the units for binomial, pests a unit "
        + "otherwise") double letBe,
        @Describe("density at which not acting would be wrong, in the same unit") double act,
        @Describe("chance of acting at the lower density, 0 to 1") double alpha,
        @Describe("chance of not acting at the higher density, 0 to 1") double beta,
        @Describe("units before which nothing is decided") int min,
        @Describe("units in the largest sample; whole steps above the smallest") int max,
        @Describe("units between two decisions") int step,
        @Describe("what is done when the largest sample decides nothing: act, count-again, or nearer-line")
        AtMaximum atMaximum,
        @Describe("a sentence that belongs to the plan") Optional<Text> note,
        @Describe("id of the source") Optional<String> source) {
    /** More than anybody counts in one go; it also keeps what a slip of the key can cost within bounds. */
    private static final int MOST_COUNTED = 2_000;
    private static final int MOST_ROWS = 50;

    /** How the counts of single units scatter. */
    public enum Scatter {
        BINOMIAL, POISSON, NEGATIVE_BINOMIAL
    }

    /** Whether units are counted that have the pest, rather than pests. */
    public boolean countsUnitsWithPest() {
        return model == Scatter.BINOMIAL;
    }

    /**
     * The plan as scouting computes with it.
     *
     * @throws IllegalArgumentException when its figures make none, with what was expected and found
     */
    public SequentialPlan exactPlan() {
        double scale = countsUnitsWithPest() ? 100 : 1;
        StopLines lines = StopLines.of(countModel(), letBe / scale, act / scale, alpha, beta);
        Expect.within(0, MOST_COUNTED, lines.highIntercept() + lines.slope() * max,
                "the count to act at on the largest sample");
        Expect.within(0, MOST_ROWS, (double) (max - min) / Math.max(1, step), "steps to the largest sample");
        return new SequentialPlan(countModel(), letBe / scale, act / scale, alpha, beta, min, max, step,
                atMaximum);
    }

    /** The plan; empty when its figures make none, which is a check's business to say. */
    public Optional<SequentialPlan> plan() {
        try {
            return Optional.of(exactPlan());
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }

    private CountModel countModel() {
        return switch (model) {
            case BINOMIAL -> new CountModel.Presence();
            case POISSON -> new CountModel.Poisson();
            case NEGATIVE_BINOMIAL -> new CountModel.NegativeBinomial(k.orElse(Double.NaN));
        };
    }
}
