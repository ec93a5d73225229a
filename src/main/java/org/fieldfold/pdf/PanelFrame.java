package org.fieldfold.pdf;

import org.fieldfold.fold.PanelSlot;

/**
 * Where a panel's upright frame (origin top left, y down) lies on its page (origin bottom left, y up).
 * Drawing on a panel is done with y up from its lower edge, so that type stands upright.
 *
 * @param a first of the six numbers of the matrix that takes a point of the panel, y up, to the page
 */
record PanelFrame(double width, double height, double a, double b, double c, double d, double e, double f) {

    static PanelFrame of(PanelSlot slot, double sheetHeight) {
        double top = sheetHeight - slot.y();
        double right = slot.x() + slot.width();
        double bottom = top - slot.height();
        double w = slot.uprightWidth();
        double h = slot.uprightHeight();
        return switch (slot.rotation()) {
            case 0 -> new PanelFrame(w, h, 1, 0, 0, 1, slot.x(), bottom);
            case 90 -> new PanelFrame(w, h, 0, -1, 1, 0, slot.x(), top);
            case 180 -> new PanelFrame(w, h, -1, 0, 0, -1, right, top);
            case 270 -> new PanelFrame(w, h, 0, 1, -1, 0, right, bottom);
            default -> throw new IllegalArgumentException("rotation " + slot.rotation());
        };
    }

    /** A page that is drawn on as it lies. */
    static PanelFrame page(double width, double height) {
        return new PanelFrame(width, height, 1, 0, 0, 1, 0, 0);
    }

    /** The box on the page of a box of the panel, given by its top left corner with y down. */
    PageBox box(double x, double y, double boxWidth, double boxHeight) {
        double low = height - y - boxHeight;
        double high = height - y;
        double x1 = a * x + c * low + e;
        double y1 = b * x + d * low + f;
        double x2 = a * (x + boxWidth) + c * high + e;
        double y2 = b * (x + boxWidth) + d * high + f;
        return new PageBox(Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2));
    }
}
