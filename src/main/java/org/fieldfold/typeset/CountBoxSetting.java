package org.fieldfold.typeset;

import java.util.List;
import org.fieldfold.manuscript.Block;
import org.fieldfold.prose.Run;

/**
 * Sets the count card: what to look at on the left, the number to act at in white on black on the right, and
 * beneath them a box for each stop, large enough for a pencil's tally.
 */
final class CountBoxSetting {
    /** A tally box is never narrower: 5 mm, the width of four pencil strokes and their bar. */
    private static final double NARROWEST_BOX = 5 * 72 / 25.4;
    private static final double RULE = 0.9;
    private static final double HAIRLINE = 0.5;
    private static final double[] SHARES = {0.27, 0.31, 0.35, 0.39, 0.43, 0.5};

    private final Block.CountBox box;
    private final Stick stick;
    private final Leading leading;
    private final double pad;
    private final TagSlot lookTag = TagSlot.inSection(Tag.Role.PARAGRAPH);
    private final TagSlot numberTag = TagSlot.inSection(Tag.Role.PARAGRAPH);

    private CountBoxSetting(Block.CountBox box, Stick stick) {
        this.box = box;
        this.stick = stick;
        this.leading = stick.leading();
        this.pad = 0.7 * stick.size();
    }

    static Choice set(Block.CountBox box, Stick stick) {
        return Choice.only(box.origin(), List.of(new CountBoxSetting(box, stick).strip()));
    }

    /** The card with its black part of one width. */
    private record Card(double right, SetText look, SetText above, SetText number, SetText below,
            int units) {}

    private Card card(double share) {
        double right = share * stick.measure();
        double inside = right - pad;
        SetText look = stick.body(box.look(), stick.measure() - right - 2 * pad, box.origin());
        SetText above = stick.body(List.of(Run.plain(box.above())), inside, box.origin());
        SetText below = stick.body(List.of(Run.plain(box.below())), inside, box.origin());
        SetText number = number(inside);
        int rightUnits = 2 * (above.count() + below.count()) + numberUnits(number) + 2;
        return new Card(right, look, above, number, below, Math.max(2 * look.count() + 2, rightUnits));
    }

    private SetText number(double inside) {
        List<Run> runs = List.of(Run.strong(box.number()));
        double largest = 2.5 * stick.size();
        SetText line = stick.line(runs, Voice.HEADING, largest, box.origin());
        if (line.width() <= inside) {
            return line;
        }
        double fitting = largest * inside / line.width() * (1 - 1e-9);
        return fitting >= 1.2 * stick.size() ? stick.line(runs, Voice.HEADING, fitting, box.origin())
                : stick.text(runs, Voice.HEADING, 1.2 * stick.size(), inside, box.origin());
    }

    private int numberUnits(SetText number) {
        return number.count() > 1 ? 3 * number.count() : leading.units(0.95 * number.size()
                + 0.3 * stick.size());
    }

    private Strip strip() {
        Card card = card(SHARES[0]);
        for (double share : SHARES) {
            Card other = card(share);
            boolean larger = other.number().size() > 1.25 * card.number().size();
            card = other.units() < card.units() || larger && other.units() <= card.units() + 2 ? other : card;
        }
        Card chosen = card;
        int perRow = Math.max(1, (int) (stick.measure() / NARROWEST_BOX));
        int rows = (box.stops() + perRow - 1) / perRow;
        int rowUnits = leading.units(Math.max(stick.enlargement() > 1
                ? leading.small() + NARROWEST_BOX : NARROWEST_BOX + 1, 2.7 * leading.half()));
        int units = card.units() + rows * rowUnits;
        return Strip.opening(2, units, false, (pen, top) -> draw(chosen, rows, rowUnits, pen, top));
    }

    private void draw(Card card, int rows, int rowUnits, Pen pen, double top) {
        double x = pen.left();
        double split = x + stick.measure() - card.right();
        double height = card.units() * leading.half();
        pen.fill(split, top, card.right(), height, Mark.Ink.BLACK);
        int lookTop = 1 + (card.units() - 2 - 2 * card.look().count()) / 2;
        for (int i = 0; i < card.look().count(); i++) {
            double baseline = leading.baseline(top, lookTop + 2 * (i + 1));
            card.look().draw(pen, i, x + pad, baseline, Mark.Ink.BLACK, lookTag);
        }
        number(card, pen, split, top);
        double below = top + height;
        for (int row = 0; row < rows; row++) {
            int count = box.stops() / rows + (row < box.stops() % rows ? 1 : 0);
            int first = row * (box.stops() / rows) + Math.min(row, box.stops() % rows);
            tally(pen, x, below + row * rowUnits * leading.half(), rowUnits * leading.half(), first, count);
        }
        pen.frame(x, top, stick.measure(), height + rows * rowUnits * leading.half(), RULE);
    }

    private void number(Card card, Pen pen, double split, double top) {
        int number = numberUnits(card.number());
        int used = 2 * (card.above().count() + card.below().count()) + number;
        double at = top + (card.units() - used) * leading.half() / 2;
        at = column(card.above(), 2, pen, split, card.right(), at, true);
        at = column(card.number(), number / Math.max(1, card.number().count()),
                pen, split, card.right(), at, true);
        column(card.below(), 2, pen, split, card.right(), at, false);
    }

    /** Centred lines; the capitals of each stand in the middle of its row. */
    private double column(SetText text, int row, Pen pen, double split, double width, double top,
            boolean more) {
        double cap = stick.metrics().capHeight(Face.BOLD) / 1000 * text.size();
        for (int i = 0; i < text.count(); i++) {
            double baseline = top + i * row * leading.half() + (row * leading.half() + cap) / 2;
            double x = split + (width - text.width(i)) / 2;
            text.draw(pen, i, x, baseline, Mark.Ink.WHITE, numberTag, more && i == text.count() - 1);
        }
        return top + text.count() * row * leading.half();
    }

    private void tally(Pen pen, double left, double top, double height, int first, int count) {
        double pitch = stick.measure() / count;
        pen.line(left, top, left + stick.measure(), top, HAIRLINE);
        for (int i = 0; i < count; i++) {
            double x = left + i * pitch;
            if (i > 0) {
                pen.line(x, top, x, top + height, HAIRLINE);
            }
            SetText number = stick.line(List.of(Run.plain(Integer.toString(first + i + 1))), Voice.TEXT,
                    leading.small(), box.origin());
            double inset = 1.6 * stick.enlargement();
            number.drawSilent(pen, 0, x + inset, top + inset + 0.65 * leading.small(), Mark.Ink.BLACK);
        }
    }
}
