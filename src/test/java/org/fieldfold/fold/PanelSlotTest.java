package org.fieldfold.fold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PanelSlotTest {
    private static final double EDGE = 18; // a quarter inch
    private static final double FOLD = 3 * 72 / 25.4;

    @Test
    void liveAreaKeepsAwayFromEdgesAndFolds() {
        Imposition sheet = Imposition.of(FoldSchemes.named("letter"), Paper.LETTER, FlipEdge.SHORT);
        PanelSlot cover = sheet.slot(1);
        assertEquals(PanelRole.COVER, cover.role());
        // the rightmost of the front: folds to its left only
        assertEquals(new Insets(EDGE, EDGE, EDGE, FOLD), rounded(cover.live()));
        assertEquals(new Insets(EDGE, FOLD, EDGE, FOLD), rounded(sheet.slot(6).live()));
        assertEquals(PanelRole.LAST, sheet.slot(6).role());
        assertEquals(3.6875 * 72 - EDGE - FOLD, cover.liveWidth(), 1e-9);
        assertEquals(612 - 2 * EDGE, cover.liveHeight(), 1e-9);
    }

    @Test
    void liveAreaTurnsWithThePanel() {
        Imposition sheet = Imposition.of(FoldSchemes.named("booklet-8"), Paper.LETTER, FlipEdge.SHORT);
        // page 5 is upside down in the upper left corner: its own foot and right lie at the sheet's edges
        PanelSlot five = sheet.slot(5);
        assertEquals(180, five.rotation());
        assertEquals(0, five.x() + five.y(), 1e-9);
        assertEquals(new Insets(FOLD, EDGE, EDGE, FOLD), rounded(five.live()));
    }

    @Test
    void panelsThatLieOnTheirSide() {
        // a half fold held sideways: what was the right edge of the sheet is its head
        FoldScheme scheme = FoldSchemes.read("side.fold",
                "scheme side\ntitle T\nsheet portrait\nhead right\ncolumns 1\nrows 1 1\nfold y1 top over\n");
        Imposition sheet = Imposition.of(scheme, Paper.A4, FlipEdge.LONG);
        for (PanelSlot slot : sheet.slots()) {
            assertTrue(slot.lyingOnItsSide());
            assertEquals(Lengths.points(148.5), slot.uprightWidth(), 1e-9);
            assertEquals(Lengths.points(210), slot.uprightHeight(), 1e-9);
        }
        assertEquals(Lengths.points(148.5), sheet.foldedWidth(), 1e-9);
        assertEquals(Lengths.points(210), sheet.foldedHeight(), 1e-9);
    }

    /** Sizes in inches by hand: halves, quarters and thirds of 8.5 by 11. */
    @ParameterizedTest
    @CsvSource({"letter, 3.6875, 8.5, 3", "accordion-4, 2.75, 8.5, 4", "half, 5.5, 8.5, 2",
            "french, 4.25, 5.5, 4",
        "map, 2.75, 4.25, 8", "booklet-8, 2.75, 4.25, 8", "double-parallel, 2.78125, 8.5, 4",
        "double-gate, 2.78125, 8.5, 4", "gate, 5.53125, 8.5, 2"})
    void foldedSize(String id, double width, double height, int layers) {
        Imposition sheet = Imposition.of(FoldSchemes.named(id), Paper.LETTER, FlipEdge.SHORT);
        assertEquals(width * 72, sheet.foldedWidth(), 1e-9);
        assertEquals(height * 72, sheet.foldedHeight(), 1e-9);
        assertEquals(layers, sheet.layers());
        assertEquals(layers * 0.1, sheet.thicknessMm(0.1), 1e-9);
    }

    @Test
    void foldsAreValleysInsideAndMountainsOutside() {
        Imposition sheet = Imposition.of(FoldSchemes.named("letter"), Paper.A4, FlipEdge.LONG);
        assertEquals(4, sheet.foldLines().size());
        for (FoldLine fold : sheet.foldLines()) {
            assertEquals(fold.side() == Side.BACK, fold.valley());
            assertEquals(sheet.sheetHeight(), fold.y2() - fold.y1(), 1e-9);
        }
        CutLine cut = Imposition.of(FoldSchemes.named("booklet-8"), Paper.LETTER, FlipEdge.LONG).cuts()
                .get(0);
        assertEquals(new CutLine(Side.FRONT, 198, 306, 594, 306), cut);
    }

    private static Insets rounded(Insets in) {
        return new Insets(round(in.top()), round(in.right()), round(in.bottom()), round(in.left()));
    }

    private static double round(double value) {
        return Math.abs(value - EDGE) < 1e-9 ? EDGE : Math.abs(value - FOLD) < 1e-9 ? FOLD : value;
    }
}
