package org.fieldfold.typeset;

import org.fieldfold.fold.Lengths;
import org.fieldfold.fold.PanelSlot;

/**
 * The live area of a panel, upright, in points from the panel's top left corner.
 *
 * @param reading place at which it is read, from 1
 */
record Frame(int reading, Place place, double left, double top, double width, double height) {
    private static final double CLEARANCE = 2;

    /** What a panel is to its reader. */
    enum Place { FIRST, INNER, LAST }

    Frame {
        if (!(width > 0) || !(height > 0)) {
            throw new IllegalArgumentException("panel " + reading + " has no live area: " + width + " x "
                    + height);
        }
    }

    static Frame of(PanelSlot slot) {
        Place place = switch (slot.role()) {
            case COVER -> Place.FIRST;
            case INNER -> Place.INNER;
            case LAST -> Place.LAST;
        };
        double left = clear(slot.live().left());
        double right = clear(slot.live().right());
        return new Frame(slot.reading(), place, left, slot.live().top(), slot.uprightWidth() - left - right,
                slot.liveHeight());
    }

    /** A little white beside the sheet's edge, where rulers and words stand right against the live area. */
    private static double clear(double side) {
        return side >= Lengths.EDGE - 0.01 ? side + CLEARANCE : side;
    }

    double bottom() {
        return top + height;
    }
}
