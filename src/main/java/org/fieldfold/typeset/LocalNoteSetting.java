package org.fieldfold.typeset;

import java.util.List;
import org.fieldfold.manuscript.Block;

/**
 * Sets an office's own note: a slip of paper with a corner turned down, as somebody might have pinned it to
 * the panel. No other block has that corner. It is never divided, so that words and signature stay together.
 */
final class LocalNoteSetting {
    private static final double RULE = 0.6;

    private LocalNoteSetting() {}

    static Choice set(Block.LocalNote note, Stick stick) {
        double pad = 0.6 * stick.size();
        double ear = 1.1 * stick.size();
        SetText text = stick.body(note.runs(), stick.measure() - pad - ear, note.origin());
        TagSlot tag = TagSlot.inSection(Tag.Role.PARAGRAPH);
        Leading leading = stick.leading();
        int units = 2 * text.count() + 2;
        return Choice.only(note.origin(), List.of(Strip.opening(2, units, false, (pen, top) -> {
            double inset = 0.3 * leading.half();
            slip(pen, top + inset, stick.measure(), units * leading.half() - 2 * inset, ear);
            for (int i = 0; i < text.count(); i++) {
                double baseline = leading.baseline(top, 2 * (i + 1) + 1);
                text.draw(pen, i, pen.left() + pad, baseline, Mark.Ink.BLACK, tag);
            }
        })));
    }

    private static void slip(Pen pen, double top, double width, double height, double ear) {
        double in = RULE / 2;
        double left = pen.left() + in;
        double right = pen.left() + width - in;
        double foot = top + height - in;
        double head = top + in;
        pen.line(left - in, head, right - ear, head, RULE);
        pen.line(left, head, left, foot, RULE);
        pen.line(left - in, foot, right + in, foot, RULE);
        pen.line(right, head + ear, right, foot, RULE);
        pen.shape(Mark.Ink.BLACK, right - ear, top, right + in, head + ear, right - ear, head + ear);
    }
}
