package org.fieldfold.typeset;

import java.util.List;
import org.fieldfold.manuscript.Block;

/** Sets words in a ruled box, and rules across the panel. */
final class NoticeSetting {
    private static final double RULE = 0.9;

    private NoticeSetting() {}

    static Choice set(Block.Notice notice, Stick stick) {
        double pad = 0.7 * stick.size();
        SetText text = stick.body(notice.runs(), stick.measure() - 2 * pad, notice.origin());
        TagSlot tag = TagSlot.inSection(Tag.Role.PARAGRAPH);
        Leading leading = stick.leading();
        int units = 2 * text.count() + 2;
        return Choice.only(notice.origin(), List.of(Strip.opening(1, units, false, (pen, top) -> {
            // the line is drawn a little inside its rows, so that the words stand level with their neighbours
            double inset = 0.3 * leading.half();
            pen.frame(pen.left(), top + inset, stick.measure(), units * leading.half() - 2 * inset, RULE);
            for (int i = 0; i < text.count(); i++) {
                double baseline = leading.baseline(top, 2 * (i + 1) + 1);
                text.draw(pen, i, pen.left() + pad, baseline, Mark.Ink.BLACK, tag);
            }
        })));
    }

    static Choice set(Block.Divider divider, Stick stick) {
        return Choice.only(divider.origin(), List.of(Strip.opening(1, 1, true, (pen, top) -> {
            double y = top + stick.leading().half() / 2;
            pen.line(pen.left(), y, pen.left() + stick.measure(), y, RULE);
        })));
    }
}
