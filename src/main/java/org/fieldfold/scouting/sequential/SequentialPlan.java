package org.fieldfold.scouting.sequential;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.fieldfold.scouting.Expect;

/**
 * A plan for stopping early, as its author declares it.
 *
 * @param low density at which acting would be wrong, in the model's unit
 * @param high density at which not acting would be wrong, above {@code low}
 * @param alpha declared chance of acting at {@code low}, above 0
 * @param beta declared chance of not acting at {@code high}, above 0; {@code alpha + beta < 1}
 * @param min units before which nothing is decided, at least 1
 * @param max the largest sample; {@code max - min} is a whole number of steps
 * @param step units between two decisions
 */
public record SequentialPlan(CountModel model, double low, double high, double alpha, double beta, int min,
        int max, int step, AtMaximum atMaximum) {
    /**
     * How much worse than declared a chance may be and still count as declared: what two printed decimals
     * hide.
     */
    public static final double ALLOWANCE = 0.005;

    public SequentialPlan {
        StopTable.of(model, StopLines.of(model, low, high, alpha, beta), min, max, step, atMaximum);
    }

    public StopLines lines() {
        return StopLines.of(model, low, high, alpha, beta);
    }

    /** What the plan would do, even when it is refused: for its author's eyes. */
    public StopTable draft() {
        return StopTable.of(model, lines(), min, max, step, atMaximum);
    }

    /** The table for print; empty when {@link #refusal()} says why not. */
    public Optional<StopTable> table() {
        return refusal().isPresent() ? Optional.empty() : Optional.of(draft());
    }

    /** Chance of acting at the low density with the table as it is printed. */
    public double trueAlpha() {
        return draft().in(low).chanceOfActing();
    }

    /** Chance of not acting at the high density with the table as it is printed. */
    public double trueBeta() {
        return draft().in(high).chanceOfNotActing();
    }

    /** Why the plan must not be printed, in plain words: a wrong decision is likelier than declared. */
    public Optional<String> refusal() {
        double wrongAct = trueAlpha();
        double wrongHold = trueBeta();
        if (wrongAct > alpha + ALLOWANCE) {
            return Optional.of(worse("acting at the low density", alpha, wrongAct));
        }
        return wrongHold > beta + ALLOWANCE
                ? Optional.of(worse("not acting at the high density", beta, wrongHold)) : Optional.empty();
    }

    private static String worse(String what, double declared, double found) {
        return String.format(Locale.ROOT, "the chance of %s is declared as %.3f and is %.3f with this table",
                what, declared, found);
    }

    /**
     * The smallest largest sample with which the plan holds what it declares.
     *
     * @param limit the most units that anybody would look at
     * @return empty when none up to {@code limit} does
     */
    public OptionalInt leastMaximum(int limit) {
        Expect.atLeast(min, limit, "most units to look at");
        for (int most = min; most <= limit; most += step) {
            SequentialPlan plan = new SequentialPlan(model, low, high, alpha, beta, min, most, step,
                    atMaximum);
            if (plan.refusal().isEmpty()) {
                return OptionalInt.of(most);
            }
        }
        return OptionalInt.empty();
    }
}
