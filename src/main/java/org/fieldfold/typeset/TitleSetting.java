package org.fieldfold.typeset;

import java.util.List;
import org.fieldfold.manuscript.Block;

/**
 * Sets the title of a section, large and in ink, with what stands beneath it; and headings inside a section.
 */
final class TitleSetting {
    /** Half lines from baseline to baseline of a title. */
    private static final int ROW = 3;
    private static final double LARGEST = 1.7;
    /** The largest size whose lines keep 120 % of leading in {@link #ROW} half lines. */
    private static final double LARGEST_OF_TWO = ROW * 0.625 / 1.2;
    private static final double SMALLEST = 1.3;

    private TitleSetting() {}

    static Choice set(Block.Title title, Stick stick, Outline outline) {
        SetText name = name(title, stick);
        SetText beneath = stick.body(title.beneath(), stick.measure(), title.origin());
        TagSlot heading = TagSlot.inSection(outline.title());
        TagSlot paragraph = TagSlot.inSection(Tag.Role.PARAGRAPH);
        int nameUnits = ROW * name.count();
        Leading leading = stick.leading();
        return Choice.only(title.origin(), List.of(Strip.opening(3, nameUnits + 2 * beneath.count(), true,
                (pen, top) -> {
                    for (int i = 0; i < name.count(); i++) {
                        name.draw(pen, i, pen.left(), leading.baseline(top, ROW * (i + 1)), stick.ink(),
                                heading);
                    }
                    for (int i = 0; i < beneath.count(); i++) {
                        double baseline = leading.baseline(top, nameUnits + 2 * (i + 1));
                        beneath.draw(pen, i, pen.left(), baseline, Mark.Ink.BLACK, paragraph);
                    }
                })));
    }

    /** On one line if it is not much smaller for it, on more if need be. */
    private static SetText name(Block.Title title, Stick stick) {
        SetText line = stick.line(title.name(), Voice.HEADING, LARGEST * stick.size(), title.origin());
        if (line.width() <= stick.measure()) {
            return line;
        }
        double fitting = LARGEST * stick.measure() / line.width() * (1 - 1e-9);
        if (fitting >= SMALLEST) {
            return stick.line(title.name(), Voice.HEADING, fitting * stick.size(), title.origin());
        }
        return stick.text(title.name(), Voice.HEADING, LARGEST_OF_TWO * stick.size(), stick.measure(),
                title.origin());
    }

    static Choice set(Block.Heading block, Stick stick, Outline outline) {
        SetText text = stick.text(block.runs(), Voice.HEADING, stick.size(), stick.measure(), block.origin());
        TagSlot tag = TagSlot.inSection(outline.heading());
        return Choice.only(block.origin(), List.of(Strip.opening(2, 2 * text.count(), true, (pen, top) -> {
            for (int i = 0; i < text.count(); i++) {
                double baseline = stick.leading().baseline(top, 2 * (i + 1));
                text.draw(pen, i, pen.left(), baseline, Mark.Ink.BLACK, tag);
            }
        })));
    }
}
