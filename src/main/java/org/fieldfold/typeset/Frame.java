package org.fieldfold.typeset;

/**
 * The live area of a panel, upright, in points from the panel's top left corner.
 *
 * @param reading place at which it is read, from 1
 */
record Frame(int reading, Place place, double left, double top, double width, double height) {
    /** What a panel is to its reader. */
    enum Place { FIRST, INNER, LAST }

    Frame {
        if (!(width > 0) || !(height > 0)) {
            throw new IllegalArgumentException("panel " + reading + " has no live area: " + width + " x " + height);
        }
    }

    double bottom() {
        return top + height;
    }
}
