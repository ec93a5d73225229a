package org.fieldfold.fold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
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
    void whatIsTuckedInIsNarrowerOnRealPaper(@ForAll("schemes") FoldScheme scheme, @ForAll Paper paper,
            @ForAll FlipEdge flip) {
        Imposition sheet = Imposition.of(scheme, paper, flip);
        double[] widths = PanelSizesTest.laidWidths(sheet);
        double[] depths = new Nesting(FoldedSheet.of(scheme)).depths(Axis.UPRIGHT);
        for (int a = 0; a < widths.length; a++) {
            for (int b = 0; b < widths.length; b++) {
                if (depths[a] > depths[b]) {
                    assertTrue(widths[a] < widths[b], scheme + ": " + a + ", " + b);
                }
            }
        }
        double folded = sheet.foldedWidth() * sheet.foldedHeight();
        assertTrue(folded <= sheet.sheetWidth() * sheet.sheetHeight() + 1e-6);
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
