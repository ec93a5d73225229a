package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import org.fieldfold.manuscript.Block;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/** Sets paragraphs, and whatever else is lines of body type. */
final class ParagraphSetting {
    static final int GAP = 1;

    private ParagraphSetting() {}

    static Choice set(Block.Paragraph paragraph, Stick stick) {
        List<Choice.Way> ways = new ArrayList<>();
        ways.add(new Choice.Way(0, false, strips(paragraph.runs(), stick, paragraph.origin())));
        if (!paragraph.brief().isEmpty()) {
            ways.add(new Choice.Way(Cost.BRIEF, true, strips(paragraph.brief(), stick, paragraph.origin())));
        }
        return new Choice(paragraph.origin(), ways);
    }

    private static List<Strip> strips(List<Run> runs, Stick stick, Span origin) {
        SetText text = stick.body(runs, stick.measure(), origin);
        TagSlot tag = TagSlot.inSection(Tag.Role.PARAGRAPH);
        return strips(GAP, true, text, stick.leading(), (pen, line, baseline) ->
                text.draw(pen, line, pen.left(), baseline, Mark.Ink.BLACK, tag));
    }

    /** Draws one line of a text. */
    interface LineInk {
        void draw(Pen pen, int line, double baseline);
    }

    /**
     * Lines as strips, so that at least two stand together at either end of a panel.
     *
     * @param opens whether the first begins a group
     */
    static List<Strip> strips(int gap, boolean opens, SetText text, Leading leading, LineInk ink) {
        List<Strip> strips = new ArrayList<>();
        int count = text.count();
        for (int from = 0; from < count;) {
            int left = count - from;
            int take = count <= 3 ? count : from == 0 || left == 2 ? 2 : 1;
            int first = from;
            Strip.Ink draw = (pen, top) -> {
                for (int i = 0; i < take; i++) {
                    ink.draw(pen, first + i, leading.baseline(top, 2 * i + 2));
                }
            };
            strips.add(from > 0 ? Strip.following(2 * take, draw)
                    : new Strip(gap, opens, Cost.DIVIDED + Cost.APART + (opens ? 0 : Cost.INSIDE), 2 * take,
                    false, draw));
            from += take;
        }
        if (strips.isEmpty()) {
            strips.add(Strip.opening(0, 0, false, (pen, top) -> {}));
        }
        return strips;
    }
}
