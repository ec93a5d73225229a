package org.fieldfold.fold;

/** A cut as it runs over one printed page, in points. */
public record CutLine(Side side, double x1, double y1, double x2, double y2) {
}
