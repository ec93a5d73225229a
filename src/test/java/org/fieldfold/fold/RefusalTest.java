package org.fieldfold.fold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What cannot be folded is refused, and the message says why. */
class RefusalTest {
    private static String refusal(String grid, String rest) {
        FoldScheme scheme = FoldSchemes.read("bad.fold",
                "scheme bad\ntitle Bad\nsheet landscape\n" + grid + "\n"
                + rest);
        return assertThrows(FoldException.class, () -> Imposition.of(scheme, Paper.LETTER, FlipEdge.SHORT))
                .getMessage();
    }

    @Test
    void aFlapWiderThanWhatItIsFoldedInto() {
        assertEquals("fold x1 left over would run through the panel in column 3, row 1, which lies across "
                + "the line:"
                + " what is folded in must not be wider than what it is folded into",
                refusal("columns 3 3 4\nrows 1", "fold x2 right over\nfold x1 left over"));
    }

    @Test
    void linesThatAreMissingOrFoldedTwiceOrNever() {
        assertEquals("line x3 does not exist: there are 3 columns and 1 rows",
                refusal("columns 1 1 1\nrows 1", "fold x3 left over"));
        assertEquals("line x1 is already folded",
                refusal("columns 1 1 1\nrows 1", "fold x1 left over\nfold x1 left over"));
        assertEquals("line x2 is never folded between the panel in column 2, row 1 and the panel in "
                + "column 3, row 1",
                refusal("columns 1 1 1\nrows 1", "fold x1 left over"));
        // the second line lies on the first by then, and is folded with it
        assertEquals("line x3 is already folded",
                refusal("columns 1 1 1 1\nrows 1", "fold x2 left over\nfold x1 left over\nfold x3 left "
                + "over"));
    }

    @Test
    void panelsThatFallOff() {
        assertEquals("the cuts part the sheet: 2 of 4 panels fall off",
                refusal("columns 1 1\nrows 1 1", "cut x1 from y0 to y2\nfold y1 top over"));
        assertEquals("the cut along y1 ends at line 3, but the sheet ends at 2",
                refusal("columns 1 1\nrows 1 1", "cut y1 from x1 to x3\nfold y1 top over\nfold x1 left "
                + "over"));
    }

    @Test
    void pagesOfABookThatAreShutIn() {
        assertEquals("the panel in column 2, row 2 and the panel in column 2, row 1 can't be reached: the "
                + "fold at line"
                + " y1 shuts them in; trim that edge or fold otherwise",
                refusal("columns 1 1\nrows 1 1", "read leafing\nfold y1 top over\nfold x1 left over"));
    }

    @Test
    void pagesThatComeLoose() {
        assertEquals("the panel in column 3, row 1 comes loose: no fold holds it at the spine",
                refusal("columns 1 1 1\nrows 1", "read leafing\ntrim right\nfold x2 right over\nfold x1 "
                + "left over"));
    }

    @Test
    void booksOfPanelsThatDoNotLieOnOneAnother() {
        assertEquals("what is leafed through must be folded to one pile of equal panels, but the panel in "
                + "column 1,"
                + " row 1 lies beside the panel in column 2, row 1",
                refusal("columns 1 2 1\nrows 1", "read leafing\nfold x1 left over, x2 right over"));
    }

    @Test
    void gatheringThatNoPaperAllows() {
        String booklet = "print one-sided\nread leafing\ncut y1 from x1 to x3\nfold y1 top under\n";
        assertEquals("the sheet cannot be gathered so: no order of the layers lets every fold close the "
                + "way it is bent",
                refusal("columns 1 1 1 1\nrows 1 1", booklet + "gather x1 valley, x2 mountain, x3 valley"));
        assertEquals("line x1 is bent twice between the panel in column 1, row 1 and the panel in column "
                + "2, row 1",
                refusal("columns 1 1 1 1\nrows 1 1", booklet + "gather x1 valley, x1 row 1 mountain"));
        assertEquals("a sheet that is gathered is leafed through, not opened: say 'read leafing'",
                refusal("columns 1 1 1 1\nrows 1 1", booklet.replace("read leafing\n", "")
                        + "gather x1 valley, x2 mountain, x3 row 1 valley, x3 row 2 mountain"));
        assertEquals("the sheet can be gathered in more than one way: say of more lines which way they bend,"
                + " or cut less", refusal("columns 1 1 1\nrows 1", "read leafing\ngather x1 valley, x2 "
                + "valley"));
    }

    @Test
    void aGatheringThatWouldTear() {
        // rows stay flat while columns gather only in one row: the cut is missing
        assertEquals("the folds do not close around the panel in column 2, row 2: the paper would have to "
                + "tear at line"
                + " x1", refusal("columns 1 1\nrows 1 1", "read leafing\ngather x1 row 1 valley"));
    }

    @Test
    void panelsTooSmallForAnything() {
        FoldScheme narrow = FoldSchemes.read("many.fold", accordion(32));
        // 279.4 / 32 = 8.73 mm, and the outer panels keep 6.35 and 3 mm free
        assertEquals("the panel in column 1, row 1 is 8.7 by 215.9 mm on letter paper: nothing is left "
                + "inside its"
                + " margins", assertThrows(FoldException.class,
                        () -> Imposition.of(narrow, Paper.LETTER, FlipEdge.SHORT)).getMessage());
    }

    @Test
    void aFaceThatIsNeverMet() {
        FoldedSheet sheet = FoldedSheet.of(FoldSchemes.named("half"));
        List<ReadFace> short3 = Opening.read(sheet).subList(0, 3);
        assertEquals("a reader never meets the panel in column 2, row 1 (the face that lies down)",
                assertThrows(FoldException.class, () -> Opening.withRoles(short3, sheet,
                false)).getMessage());
    }

    private static String accordion(int columns) {
        StringBuilder text = new StringBuilder("scheme many\ntitle Many\nsheet landscape\nrows 1\ncolumns"
                + " 1".repeat(columns) + "\n");
        for (int k = 1; k < columns; k++) {
            text.append("fold x").append(k).append(" left ").append(k % 2 == 0 ? "over" : "under")
                .append('\n');
        }
        return text.toString();
    }
}
