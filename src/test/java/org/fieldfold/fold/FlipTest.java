package org.fieldfold.fold;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Prints both pages on a sheet in space, turns it as the printer does, folds it, and looks where the type
 * stands. Space has x to the right, y down the page, z towards the reader; every movement is a half turn.
 */
class FlipTest {
    private static final double EXACT = 1e-6;

    /** A half turn about the upright (y) or the level (x) axis. */
    private static double[] halfTurn(double[] v, boolean aboutUpright) {
        return aboutUpright ? new double[] {-v[0], v[1], -v[2]} : new double[] {v[0], -v[1], -v[2]};
    }

    /** The printer turns the paper about an edge; on a lying page the short edge stands upright. */
    private static boolean edgeStandsUpright(Imposition sheet) {
        boolean lying = sheet.sheetWidth() > sheet.sheetHeight();
        return lying ? sheet.flip() == FlipEdge.SHORT : sheet.flip() == FlipEdge.LONG;
    }

    /**
     * Where a point or direction printed on a page is, with the front towards the reader; origin mid-sheet.
     */
    private static double[] printed(Imposition sheet, Side side, double x, double y) {
        double[] onPaper = {x, y, 0};
        return side == Side.FRONT ? onPaper : halfTurn(onPaper, edgeStandsUpright(sheet));
    }

    private static double[] up(Imposition sheet, PanelSlot slot) {
        double angle = StrictMath.toRadians(slot.rotation());
        return printed(sheet, slot.side(), StrictMath.sin(angle), -StrictMath.cos(angle));
    }

    private static double[] middle(Imposition sheet, PanelSlot slot) {
        return printed(sheet, slot.side(), slot.x() + slot.width() / 2 - sheet.sheetWidth() / 2,
                slot.y() + slot.height() / 2 - sheet.sheetHeight() / 2);
    }

    @TestFactory
    List<DynamicTest> everySchemePaperAndEdge() {
        List<DynamicTest> tests = new ArrayList<>();
        List<FoldScheme> schemes = new ArrayList<>(FoldSchemes.all());
        schemes.add(FoldSchemes.read("side.fold", "scheme side\ntitle T\nsheet portrait\ncolumns 1 1 1\nrows "
                + "1 1\n"
                + "head right\nfold x2 right over\nfold x1 left over\nfold y1 bottom under\n"));
        schemes.add(FoldSchemes.read("foot.fold", "scheme foot\ntitle T\nsheet landscape\ncolumns 1 1\nrows "
                + "1 1 1\n"
                + "head left\nfold y1 top under, y2 bottom over\nfold x1 right under\n"));
        for (FoldScheme scheme : schemes) {
            for (FlipEdge edge : FlipEdge.values()) {
                for (Paper paper : Paper.values()) {
                    tests.add(DynamicTest.dynamicTest(scheme.id() + " " + paper + " " + edge,
                            () -> check(Imposition.of(scheme, paper, edge))));
                }
            }
        }
        return tests;
    }

    private static void check(Imposition sheet) {
        FoldedSheet folded = FoldedSheet.of(sheet.scheme());
        List<ReadFace> faces = sheet.scheme().leafed() ? Leafing.read(folded) : Opening.read(folded);
        boolean frontIsUpper = faces.get(0).face().upper();
        for (int a = 0; a < faces.size(); a++) {
            PanelSlot slot = sheet.slots().get(a);
            assertEquals(faces.get(a).face().upper() == frontIsUpper, slot.side() == Side.FRONT);
            for (int b = 0; b < faces.size(); b++) {
                if (faces.get(a).face().cell().equals(faces.get(b).face().cell())) {
                    assertArrayEquals(middle(sheet, slot), middle(sheet, sheet.slots().get(b)), EXACT,
                            "a panel and its true back");
                }
            }
        }
        View view = coverView(folded, faces);
        for (int k = 0; k < faces.size(); k++) {
            PanelSlot slot = sheet.slots().get(k);
            PlacedPanel panel = folded.pile().at(faces.get(k).face().cell());
            if (sheet.scheme().leafed() || slot.role() != PanelRole.INNER) {
                // in the closed piece the cover, the back, and each leaf of a book stand with their heads up
                assertHeadUp(sheet, inPile(up(sheet, slot), frontIsUpper, panel), slot);
            }
        }
        if (!sheet.scheme().leafed()) {
            checkOpening(sheet, folded, faces, view);
        }
    }

    /** Opens step by step: each panel has its head up when it first comes into sight. */
    private static void checkOpening(Imposition sheet, FoldedSheet folded, List<ReadFace> faces, View view) {
        List<Face> all = faces.stream().map(ReadFace::face).toList();
        Set<Face> seen = new HashSet<>(List.of(all.get(0), all.get(all.size() - 1)));
        boolean frontIsUpper = all.get(0).upper();
        Pile pile = folded.pile();
        for (int step = folded.made().size() - 1; step >= 0; step--) {
            for (int k = folded.made().get(step).size() - 1; k >= 0; k--) {
                pile = pile.unfold(folded.made().get(step).get(k));
            }
            View[] views = step == 0 ? new View[] {view, view.turnedOver()} : new View[] {view};
            for (View from : views) {
                for (PlacedPanel panel : from.whollyVisible(pile)) {
                    if (seen.add(from.faceOf(panel))) {
                        PanelSlot slot = sheet.slots().get(all.indexOf(from.faceOf(panel)));
                        assertHeadUp(sheet, inPile(up(sheet, slot), frontIsUpper, panel), slot);
                    }
                }
            }
        }
        assertEquals(all.size(), seen.size(), "all panels come into sight");
    }

    private static View coverView(FoldedSheet folded, List<ReadFace> faces) {
        View above = new View(folded.scheme().head().heading(), true);
        PlacedPanel cover = folded.pile().at(faces.get(0).face().cell());
        return above.faceOf(cover).equals(faces.get(0).face()) ? above : above.turnedOver();
    }

    /** The folder lays the sheet, front down if need be (turned like a leaf), and folds it. */
    private static double[] inPile(double[] v, boolean frontIsUpper, PlacedPanel panel) {
        double[] w = frontIsUpper ? v : halfTurn(v, true);
        w = panel.mirroredX() ? halfTurn(w, true) : w;
        return panel.mirroredY() ? halfTurn(w, false) : w;
    }

    private static void assertHeadUp(Imposition sheet, double[] up, PanelSlot slot) {
        double[] head = switch (sheet.scheme().head()) {
            case TOP -> new double[] {0, -1, 0};
            case RIGHT -> new double[] {1, 0, 0};
            case BOTTOM -> new double[] {0, 1, 0};
            case LEFT -> new double[] {-1, 0, 0};
        };
        assertArrayEquals(head, up, EXACT,
                String.format(Locale.ROOT, "panel %d of %s", slot.reading(), sheet.scheme().id()));
    }
}
