package org.fieldfold.fold;

/**
 * A cut along a line between panels.
 *
 * @param from the crossing line at which it begins: 0 for the edge of the sheet
 * @param to the crossing line at which it ends, counted the same way
 */
public record Cut(GridLine line, int from, int to) {
    public Cut {
        if (from < 0 || to <= from) {
            throw new IllegalArgumentException("a cut runs from a lower line to a higher one: " + from
                    + " to " + to);
        }
    }
}
