package org.fieldfold.typeset;

/** How wide the drawings are for their height. Supplied by whoever owns the figures. */
public interface FigureShapes {
    /** Width divided by height of a figure's box. */
    double aspect(String figure);
}
