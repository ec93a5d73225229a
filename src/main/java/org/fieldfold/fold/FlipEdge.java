package org.fieldfold.fold;

/** The edge of the paper about which a duplex printer turns the sheet to print its back. */
public enum FlipEdge {
    SHORT, LONG;

    /** Whether a page of this size is turned about an upright axis, like the leaf of a book. */
    boolean turnsLikeALeaf(double pageWidth, double pageHeight) {
        boolean uprightEdgeIsShort = pageHeight < pageWidth;
        return (this == SHORT) == uprightEdgeIsShort;
    }
}
