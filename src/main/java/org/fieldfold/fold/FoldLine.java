package org.fieldfold.fold;

/**
 * A fold as it runs over one printed page, edge to edge of the panels that it parts, in points. Marks for it
 * are drawn only outside the live area.
 *
 * @param valley whether the fold closes towards the one who looks at this page; the other page then has a
 *     mountain
 */
public record FoldLine(Side side, double x1, double y1, double x2, double y2, boolean valley) {
}
