package org.fieldfold.fold;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Schemes made of any legal folds, in any order, until every line is folded. */
final class AnyFolds {
    private AnyFolds() {
    }

    static Arbitrary<FoldScheme> schemes() {
        Arbitrary<List<Integer>> choices = Arbitraries.integers().between(0, 10_000).withoutEdgeCases()
                .list().ofSize(12);
        return Combinators.combine(Arbitraries.integers().between(1, 5), Arbitraries.integers().between(1, 3),
                Arbitraries.of(FoldScheme.Head.values()), choices).as(AnyFolds::scheme);
    }

    private static FoldScheme scheme(int columns, int rows, FoldScheme.Head head, List<Integer> choices) {
        List<FoldStep> steps = new ArrayList<>();
        FoldScheme scheme = with(columns, rows, head, steps);
        for (int choice : choices) {
            List<Fold> legal = legalAfter(scheme);
            if (legal.isEmpty()) {
                return scheme;
            }
            steps.add(new FoldStep.Folds(List.of(legal.get(choice % legal.size()))));
            scheme = with(columns, rows, head, steps);
        }
        throw new IllegalStateException("still not folded: " + scheme);
    }

    private static FoldScheme with(int columns, int rows, FoldScheme.Head head, List<FoldStep> steps) {
        return new FoldScheme("any", "Any folds", true, Collections.nCopies(columns, 1),
                Collections.nCopies(rows, 1), false, false, head, steps, List.of(), List.of());
    }

    /** Every fold about a line that is not folded yet, judged by the joints alone. */
    private static List<Fold> legalAfter(FoldScheme scheme) {
        Pile pile = Pile.flat(scheme);
        List<GridLine> open = new ArrayList<>();
        for (FoldStep step : scheme.steps()) {
            for (Fold fold : ((FoldStep.Folds) step).folds()) {
                pile = pile.fold(pile.plan(fold));
            }
        }
        for (Joint joint : Joint.of(scheme)) {
            Axis axis = joint.line().axis();
            boolean flat = pile.at(joint.low()).mirrored(axis) == pile.at(joint.high()).mirrored(axis);
            if (flat && !open.contains(joint.line())) {
                open.add(joint.line());
            }
        }
        List<Fold> legal = new ArrayList<>();
        for (GridLine line : open) {
            for (Part part : Part.values()) {
                if (part.axis() == line.axis()) {
                    legal.add(new Fold(line, part, true));
                    legal.add(new Fold(line, part, false));
                }
            }
        }
        return legal;
    }
}
