package org.fieldfold.scouting;

/** The way through the field on which the stops lie. */
public enum Walk {
    /** Down one side and back up to the other corner. */
    V,
    /** Two V side by side, for a wider field. */
    W,
    /** Both diagonals. */
    X,
    /** Along the margins, for what flies or walks in from outside. */
    EDGE,
    /** Along rows picked evenly across the field. */
    ROWS,
    /** From trap to trap. */
    TRAPS,
    /** A garden bed or a bench, looked over as a whole. */
    BED
}
