package org.fieldfold.fold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class GatheringTest {
    @Test
    void flatPagesAreReadFrontBackFrontBack() {
        Gathering sheets = new Gathering(FlatScheme.PAGE.on(Paper.A4, FlipEdge.LONG), 3);
        assertEquals(List.of(Side.FRONT, Side.BACK, Side.FRONT, Side.BACK, Side.FRONT, Side.BACK),
                sheets.slots().stream().map(PanelSlot::side).toList());
        assertEquals(List.of(0, 0, 1, 1, 2, 2),
                IntStream.rangeClosed(1, 6).map(sheets::sheetOf).boxed().toList());
        assertEquals(List.of(PanelRole.COVER, PanelRole.INNER, PanelRole.INNER, PanelRole.INNER,
                PanelRole.INNER, PanelRole.LAST), sheets.slots().stream().map(PanelSlot::role).toList());
    }

    /** Upright pages turned on the long edge keep their heads up; on the short edge backs stand on theirs. */
    @ParameterizedTest
    @EnumSource(FlipEdge.class)
    void backsFollowTheEdgeThatASheetIsTurnedOn(FlipEdge flip) {
        for (FlatScheme scheme : List.of(FlatScheme.PAGE, FlatScheme.WIDE_PAGE)) {
            boolean leaf = (scheme == FlatScheme.PAGE) == (flip == FlipEdge.LONG);
            List<PanelSlot> slots = scheme.on(Paper.LETTER, flip).slots();
            assertEquals(List.of(0, leaf ? 0 : 180), slots.stream().map(PanelSlot::rotation).toList());
        }
    }

    @Test
    void foldedSheetsKeepTheirOwnOrder() {
        Imposition letter = Imposition.of(FoldSchemes.named("letter"), Paper.LETTER, FlipEdge.SHORT);
        Gathering two = new Gathering(letter, 2);
        assertEquals(12, two.slots().size());
        for (int reading = 1; reading <= 6; reading++) {
            assertEquals(letter.slot(reading).x(), two.slot(reading + 6).x());
            assertEquals(letter.slot(reading).side(), two.slot(reading + 6).side());
            assertEquals(reading + 6, two.slot(reading + 6).reading());
        }
        assertEquals(letter.on(Side.BACK).stream().map(slot -> slot.reading() + 6).toList(),
                two.on(1, Side.BACK).stream().map(PanelSlot::reading).toList());
        assertEquals(letter.slots(), new Gathering(letter, 1).slots());
    }

    @Test
    void marginsAreNeverNarrowerThanWhatAPrinterLeavesWhite() {
        Insets margins = new Insets(40, 60, 1, 60);
        PanelSlot slot = FlatScheme.PAGE.on(Paper.LETTER, FlipEdge.SHORT, margins).slot(2);
        assertEquals(new Insets(40, 60, Lengths.EDGE, 60), slot.live());
        assertEquals(1, FlatScheme.POSTER.on(Paper.LETTER, FlipEdge.SHORT).slots().size());
    }

    @Test
    void refusesWhatThereIsNot() {
        Imposition page = FlatScheme.PAGE.on(Paper.LETTER, FlipEdge.LONG);
        assertThrows(IllegalArgumentException.class, () -> new Gathering(page, 0));
        assertThrows(IllegalArgumentException.class, () -> new Gathering(page, 2).slot(5));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new Gathering(page, 2).slot(0))
                .getMessage().contains("1 to 4"));
    }
}
