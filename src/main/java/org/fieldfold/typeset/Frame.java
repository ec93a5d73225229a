package org.fieldfold.typeset;

import java.util.List;
import org.fieldfold.fold.Gathering;
import org.fieldfold.fold.Lengths;
import org.fieldfold.fold.PanelSlot;

/**
 * The live area of a panel, upright, in points from the panel's top left corner.
 *
 * @param reading place at which it is read, from 1
 * @param opens whether a sheet begins with it that may be taken along alone
 */
record Frame(int reading, Place place, double left, double top, double width, double height, boolean opens) {
    private static final double CLEARANCE = 2;

    /** What a panel is to its reader. */
    enum Place { FIRST, INNER, LAST }

    Frame {
        if (!(width > 0) || !(height > 0)) {
            throw new IllegalArgumentException("panel " + reading + " has no live area: " + width + " x "
                    + height);
        }
    }

    Frame(int reading, Place place, double left, double top, double width, double height) {
        this(reading, place, left, top, width, height, false);
    }

    /** The panels of sheets that lie on one another. */
    static List<Frame> of(Gathering sheets) {
        return sheets.slots().stream().map(slot -> {
            Frame frame = of(slot);
            boolean first = slot.reading() == 1 || sheets.sheetOf(slot.reading() - 1) < sheets
                    .sheetOf(slot.reading());
            return new Frame(frame.reading, frame.place, frame.left, frame.top, frame.width, frame.height,
                    first);
        }).toList();
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
