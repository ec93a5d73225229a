package org.fieldfold.fold;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A sheet folded by its scheme, in units of the scheme's proportions.
 *
 * @param made for each step that consists of folds, what they did, so that a reader can open them again
 */
record FoldedSheet(FoldScheme scheme, List<Joint> joints, List<Crease> creases, List<List<Pile.Made>> made,
        Pile pile) {

    /** Folds the sheet, or says why it cannot be folded so. */
    static FoldedSheet of(FoldScheme scheme) {
        List<Joint> joints = Joint.of(scheme);
        List<Crease> creases = new ArrayList<>();
        List<List<Pile.Made>> made = new ArrayList<>();
        Pile pile = Pile.flat(scheme);
        int step = 0;
        for (FoldStep movement : scheme.steps()) {
            if (movement instanceof FoldStep.Folds folds) {
                List<Pile.Made> undo = new ArrayList<>();
                for (Fold fold : folds.folds()) {
                    requireUnfolded(scheme, creases, fold.line());
                    Pile.Made plan = pile.plan(fold);
                    Pile folded = pile.fold(plan);
                    step++;
                    creases.addAll(creasesOf(pile, folded, joints, fold, step));
                    undo.add(plan);
                    pile = folded;
                }
                made.add(List.copyOf(undo));
            } else if (movement instanceof FoldStep.Gather gather) {
                step++;
                pile = gather(scheme, pile, joints, creases, gather, step);
            }
        }
        FoldedSheet sheet = new FoldedSheet(scheme, joints, List.copyOf(creases), List.copyOf(made), pile);
        sheet.requireAllFolded();
        return sheet.proved();
    }

    private static void requireUnfolded(FoldScheme scheme, List<Crease> creases, GridLine line) {
        scheme.require(line);
        if (creases.stream().anyMatch(crease -> crease.joint().line().equals(line))) {
            throw new FoldException("line " + line + " is already folded");
        }
    }

    /** A joint is creased by a fold that turns one of its panels and leaves the other. */
    private static List<Crease> creasesOf(Pile before, Pile after, List<Joint> joints, Fold fold,
            int step) {
        List<Crease> creases = new ArrayList<>();
        for (Joint joint : joints) {
            PlacedPanel low = before.at(joint.low());
            boolean lowTurned = low.faceUp() != after.at(joint.low()).faceUp();
            boolean highTurned = before.at(joint.high()).faceUp() != after.at(joint.high()).faceUp();
            if (lowTurned != highTurned) {
                creases.add(new Crease(joint, fold.over() == low.faceUp(), step, low.faceUp()));
            }
        }
        return creases;
    }

    private static Pile gather(FoldScheme scheme, Pile pile, List<Joint> joints, List<Crease> creases,
            FoldStep.Gather gather, int step) {
        for (FoldStep.Bend bend : gather.bends()) {
            requireUnfolded(scheme, creases, bend.line());
        }
        List<Crease> bent = new ArrayList<>();
        for (FoldStep.Bend bend : gather.bends()) {
            for (Joint joint : joints) {
                boolean meant = joint.line().equals(bend.line())
                        && (bend.band() == 0 || bend.band() == joint.band() + 1);
                if (meant && bent.stream().anyMatch(crease -> crease.joint().equals(joint))) {
                    throw new FoldException("line " + joint.line() + " is bent twice between " + joint.low()
                            + " and " + joint.high());
                }
                if (meant) {
                    bent.add(new Crease(joint, bend.valley(), step, false));
                }
            }
        }
        creases.addAll(bent);
        PlacedPanel fixed = pile.layers().get(0);
        Map<Cell, PlacedPanel> placed = Placement.byCreases(Pile.flat(scheme).layers(), fixed, joints,
                creases);
        return new Pile(LayerSearch.only(placed, creases));
    }

    private void requireAllFolded() {
        for (Joint joint : joints) {
            if (creases.stream().noneMatch(crease -> crease.joint().equals(joint))) {
                throw new FoldException("line " + joint.line() + " is never folded between " + joint.low()
                        + " and " + joint.high());
            }
        }
    }

    private FoldedSheet proved() {
        Optional<String> flaw = LayerOrder.flaw(pile.layers(), creases);
        if (flaw.isPresent()) {
            throw new FoldException(flaw.get());
        }
        // the second way to the same outline: it throws where the folds do not close
        Placement.byCreases(Pile.flat(scheme).layers(), pile.layers().get(0), joints, creases);
        return this;
    }

    /** The largest number of layers that lie on one another anywhere. */
    int layers() {
        int most = 0;
        for (PlacedPanel a : pile.layers()) {
            for (PlacedPanel b : pile.layers()) {
                double x = a.left() + 0.5;
                double y = b.top() + 0.5;
                most = Math.max(most, (int) pile.layers().stream().filter(p -> p.covers(x, y)).count());
            }
        }
        return most;
    }
}
