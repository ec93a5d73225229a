package org.fieldfold.pdf;

import java.util.List;
import java.util.Optional;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Lengths;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.TypeMetrics;

/**
 * Tells the reader of the open sheet to turn it over: at the foot of the panel after which reading goes on on
 * the other side for the last time, upright as that panel is.
 *
 * @param at left end of the words in the panel's frame
 */
record TurnOver(PanelSlot slot, PanelFrame frame, double at, double width, String text) {

    /** Nothing when all is on one side, or when that panel's foot is not at an edge of the sheet. */
    static Optional<TurnOver> of(Imposition imposition, String text, TypeMetrics metrics) {
        List<PanelSlot> slots = imposition.slots();
        for (int i = slots.size() - 2; i >= 0; i--) {
            PanelSlot slot = slots.get(i);
            if (slot.side() != slots.get(i + 1).side()) {
                double width = metrics.width(Face.REGULAR, text) * Band.TYPE / 1000;
                double at = slot.uprightWidth() - slot.live().right() - width;
                return slot.live().bottom() < Lengths.EDGE - 0.01 || at < slot.live().left()
                        ? Optional.empty()
                        : Optional.of(new TurnOver(slot, PanelFrame.of(slot, imposition.sheetHeight()), at,
                        width, text));
            }
        }
        return Optional.empty();
    }

    PageBox box() {
        return frame.box(at, frame.height() - Band.INNER, width, Band.INNER - Band.OUTER);
    }

    Mark mark() {
        return new Mark.Words(at, frame.height() - Band.FEET_OUT, Face.REGULAR, Band.TYPE, Mark.Ink.BLACK,
                text, Optional.empty());
    }
}
