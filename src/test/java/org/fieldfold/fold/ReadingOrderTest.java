package org.fieldfold.fold;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ReadingOrderTest {
    /** Reading numbers on a page line by line, an inverted panel with a minus. */
    private static String page(FoldScheme scheme, Side side) {
        // turned like a leaf, so that the pages show what a reader sees who turns the flat sheet over
        FlipEdge edge = scheme.landscape() ? FlipEdge.SHORT : FlipEdge.LONG;
        return Imposition.of(scheme, Paper.A3, edge).on(side).stream()
                .map(slot -> (slot.rotation() == 180 ? "-" : "") + slot.reading())
                .collect(Collectors.joining(" "));
    }

    private static String page(String id, Side side) {
        return page(FoldSchemes.named(id), side);
    }

    private static FoldScheme signature(String id, String columns, String folds) {
        return FoldSchemes.read(id, "scheme " + id + "\ntitle Signature\nsheet landscape\ncolumns " + columns
                + "\nrows 1 1\nread leafing\ntrim top right\n" + folds);
    }

    @Test
    void letterFold() {
        // outside: flap, back, cover; inside: left to right (common practice, no source)
        assertEquals("2 6 1", page("letter", Side.FRONT));
        assertEquals("3 4 5", page("letter", Side.BACK));
    }

    @Test
    void accordionOfFour() {
        // the cover opens like a book onto four panels; the back of the folded piece shares the cover's side
        assertEquals("8 6 7 1", page("accordion-4", Side.FRONT));
        assertEquals("2 3 4 5", page("accordion-4", Side.BACK));
    }

    @Test
    void frenchFold() {
        // one printed side, folded twice: front and back below, the spread upside down above (common
        // practice)
        assertEquals("-3 -2 8 1", page("french", Side.FRONT));
        assertEquals("4 5 6 7", page("french", Side.BACK));
    }

    @Test
    void oneCutBooklet() {
        // the layout known from one-page booklets: 5 4 3 2 upside down over 6 7 8 1 (common practice, no
        // source)
        assertEquals("-5 -4 -3 -2 6 7 8 1", page("booklet-8", Side.FRONT));
    }

    @Test
    void signatureOfEightPages() {
        // right-angle folds, heads together: 5 4 over 8 1, 3 6 over 2 7 (common practice, value from memory)
        FoldScheme scheme = signature("signature-8", "1 1", "fold y1 top over\nfold x1 left over\n");
        assertEquals("-5 -4 8 1", page(scheme, Side.FRONT));
        assertEquals("-3 -6 2 7", page(scheme, Side.BACK));
    }

    @Test
    void signatureOfSixteenPages() {
        // sheetwise 16 pages: 5 12 9 8 over 4 13 16 1, and 7 10 11 6 over 2 15 14 3 (value from memory)
        FoldScheme scheme = signature("signature-16", "1 1 1 1",
                "fold x2 right under\nfold y1 top over\nfold x1 left over\n");
        assertEquals("-5 -12 -9 -8 4 13 16 1", page(scheme, Side.FRONT));
        assertEquals("-7 -10 -11 -6 2 15 14 3", page(scheme, Side.BACK));
    }
}
