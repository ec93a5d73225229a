package org.fieldfold.fold;

/**
 * A fold as it runs over one printed page, edge to edge of the panels that it parts, in points. Marks for it
 * are drawn only outside the live area.
 *
 * @param valley whether the fold closes towards the one who looks at this page; the other page then has a
 *     mountain
 * @param step as the how manyth fold it is made, from 1; all that is gathered at once is one
 * @param move what the folder does who began with this page up
 */
public record FoldLine(Side side, double x1, double y1, double x2, double y2, boolean valley, int step,
        Move move) {
    /** Where the folded part goes. */
    public enum Move {
        /** On top of the rest. */
        OVER,
        /** Beneath the rest. */
        UNDER,
        /** With another line, on which it lies by then, or with all that is pushed together. */
        ALONG
    }
}
