package org.fieldfold.typeset;

import org.fieldfold.fold.PanelSlot;

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
        return new Frame(slot.reading(), place, slot.live().left(), slot.live().top(), slot.liveWidth(),
                slot.liveHeight());
    }

    double bottom() {
        return top + height;
    }
}
