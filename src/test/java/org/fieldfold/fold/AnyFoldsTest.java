package org.fieldfold.fold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class AnyFoldsTest {
    @Provide
    Arbitrary<FoldScheme> schemes() {
        return AnyFolds.schemes();
    }

    @Property(tries = 400, edgeCases = EdgeCasesMode.MIXIN)
    void everyPanelFaceIsReadExactlyOnce(@ForAll("schemes") FoldScheme scheme) {
        List<ReadFace> order = Opening.read(FoldedSheet.of(scheme));
        Set<Face> faces = new HashSet<>();
        order.forEach(read -> faces.add(read.face()));
        int panels = scheme.columns().size() * scheme.rows().size();
        assertEquals(2 * panels, order.size());
        assertEquals(2 * panels, faces.size());
        assertEquals(PanelRole.COVER, order.get(0).role());
        assertEquals(PanelRole.LAST, order.get(order.size() - 1).role());
    }

    @Property(tries = 400, edgeCases = EdgeCasesMode.MIXIN)
    void unfoldingInReverseRestoresTheSheet(@ForAll("schemes") FoldScheme scheme) {
        List<Pile> before = new ArrayList<>();
        List<Pile.Made> made = new ArrayList<>();
        Pile pile = Pile.flat(scheme);
        for (FoldStep step : scheme.steps()) {
            for (Fold fold : ((FoldStep.Folds) step).folds()) {
                before.add(pile);
                made.add(pile.plan(fold));
                pile = pile.fold(made.get(made.size() - 1));
            }
        }
        for (int k = made.size() - 1; k >= 0; k--) {
            pile = pile.unfold(made.get(k));
            assertEquals(stacks(before.get(k)), stacks(pile), "after unfolding step " + (k + 1));
        }
    }

    @Property(tries = 400, edgeCases = EdgeCasesMode.MIXIN)
    void layersObeyTheLawsOfPaperAndCreasesAloneGiveTheSameOutline(@ForAll("schemes") FoldScheme scheme) {
        FoldedSheet sheet = FoldedSheet.of(scheme);
        assertTrue(LayerOrder.flaw(sheet.pile().layers(), sheet.creases()).isEmpty());
        PlacedPanel fixed = sheet.pile().layers().get(0);
        Placement.byCreases(Pile.flat(scheme).layers(), fixed, sheet.joints(), sheet.creases())
                .forEach((cell, panel) -> assertEquals(sheet.pile().at(cell), panel));
    }

    @Property(tries = 400, edgeCases = EdgeCasesMode.MIXIN)
    void whatIsTuckedInIsNarrowerAndHasRoom(@ForAll("schemes") FoldScheme scheme, @ForAll Paper paper) {
        FoldedSheet sheet = FoldedSheet.of(scheme);
        Nesting nesting = new Nesting(sheet);
        Map<Cell, PlacedPanel> real = new Imposer(scheme, paper, FlipEdge.SHORT).folded();
        for (Axis axis : Axis.values()) {
            double[] depths = nesting.depths(axis);
            for (PlacedPanel a : real.values()) {
                for (PlacedPanel b : real.values()) {
                    boolean deeper = depths[a.cell().along(axis)] > depths[b.cell().along(axis)];
                    assertTrue(!deeper || extent(a, axis) < extent(b, axis), a + ", " + b);
                }
            }
            for (Nesting.Tuck tuck : nesting.tucks(axis)) {
                PlacedPanel around = real.get(tuck.bight().panel().cell());
                PlacedPanel inside = real.get(tuck.panel().cell());
                double fold = around.edgeTowards(tuck.bight().joint());
                double room = fold == around.low(axis) ? inside.low(axis) - fold : fold - inside.high(axis);
                // folds at right angles can tuck two columns into each other in turn: no width helps that
                double needed = scheme.lines(Axis.UPRIGHT) == 0 || scheme.lines(Axis.LEVEL) == 0
                        ? paper.tuck() / 2 : -1e-6;
                assertTrue(room >= needed, inside + " has " + room + " pt to the fold around it");
            }
        }
    }

    private static double extent(PlacedPanel panel, Axis axis) {
        return panel.high(axis) - panel.low(axis);
    }

    /** What lies on what at each place of the table, lowest first, and with which face up. */
    private static TreeMap<String, List<String>> stacks(Pile pile) {
        TreeMap<String, List<String>> stacks = new TreeMap<>();
        for (PlacedPanel panel : pile.layers()) {
            stacks.computeIfAbsent(panel.left() + " " + panel.top(), place -> new ArrayList<>())
                    .add(panel.cell() + " " + panel.mirroredX() + panel.mirroredY());
        }
        return stacks;
    }
}
