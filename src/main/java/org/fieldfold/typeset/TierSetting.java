package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import org.fieldfold.manuscript.Block;

/**
 * Sets a tier of control: a rail down its left edge with as many teeth at its head as its number says, so
 * that it is told by touch of the eye and not by colour; the heading, the measures, and the sentence behind
 * them.
 */
final class TierSetting {
    /** Of the type size: how far the text stands in from the rail. */
    private static final double INDENT = 1.65;

    private TierSetting() {}

    static Choice set(Block.Tier tier, Stick stick, Outline outline) {
        double shift = INDENT * stick.size();
        List<Strip> strips = new ArrayList<>(heading(tier, shift, stick, outline));
        TagSlot list = TagSlot.inSection(Tag.Role.LIST);
        double indent = ItemsSetting.indent("– ", stick, tier.origin());
        for (Block.Measure measure : tier.measures()) {
            strips.addAll(ItemsSetting.item("– ", indent, measure.runs(), list, shift, false, stick,
                    measure.origin()));
        }
        SetText after = stick.body(tier.after(), stick.measure() - shift, tier.origin());
        if (after.count() > 0) {
            TagSlot tag = TagSlot.inSection(Tag.Role.PARAGRAPH);
            keepLast(strips);
            strips.addAll(ParagraphSetting.strips(0, false, after, stick.leading(), (pen, line, baseline) ->
                    after.draw(pen, line, pen.left() + shift, baseline, Mark.Ink.BLACK, tag)));
        }
        List<Strip> railed = railed(strips, tier.tier(), stick.leading());
        return Choice.only(tier.origin(),
                tier.tier() == 3 ? List.of(whole(railed, stick.leading())) : railed);
    }

    /**
     * One strip of all: the third tier is never divided, neither between panels nor where a panel is too
     * short, so that no material is ever seen without the caution behind it.
     */
    private static Strip whole(List<Strip> strips, Leading leading) {
        Strip first = strips.get(0);
        int units = strips.stream().mapToInt(strip -> strip.gap() + strip.units()).sum() - first.gap();
        boolean keep = strips.get(strips.size() - 1).keep();
        return new Strip(first.gap(), first.opens(), first.breaking(), units, keep, (pen, top) -> {
            int down = -first.gap();
            for (Strip strip : strips) {
                down += strip.gap();
                strip.draw().draw(pen, top + down * leading.half());
                down += strip.units();
            }
        });
    }

    private static List<Strip> heading(Block.Tier tier, double shift, Stick stick, Outline outline) {
        SetText text = stick.text(tier.heading(), Voice.HEADING, stick.size(), stick.measure() - shift,
                tier.origin());
        TagSlot tag = TagSlot.inSection(outline.heading());
        return List.of(Strip.opening(2, 2 * text.count(), true, (pen, top) -> {
            for (int i = 0; i < text.count(); i++) {
                double baseline = stick.leading().baseline(top, 2 * (i + 1));
                text.draw(pen, i, pen.left() + shift, baseline, Mark.Ink.BLACK, tag);
            }
        }));
    }

    private static void keepLast(List<Strip> strips) {
        int last = strips.size() - 1;
        strips.set(last, strips.get(last).kept());
    }

    /** Draws the rail beside every strip, and the teeth beside the first. */
    private static List<Strip> railed(List<Strip> strips, int teeth, Leading leading) {
        List<Strip> railed = new ArrayList<>();
        for (int i = 0; i < strips.size(); i++) {
            Strip strip = strips.get(i);
            boolean first = i == 0;
            boolean last = i == strips.size() - 1;
            Strip.Ink draw = (pen, top) -> {
                rail(pen, top, strip.units(), first, last, leading);
                if (first) {
                    teeth(pen, top, teeth, leading);
                }
                strip.draw().draw(pen, top);
            };
            // the first tier of a section is where it divides best: what is seen on one panel, what is done
            // on the next
            long breaking = first && teeth == 1 ? Cost.DIVIDED : strip.breaking();
            railed.add(new Strip(strip.gap(), strip.opens(), breaking, strip.units(), strip.keep(), draw));
        }
        return railed;
    }

    private static void rail(Pen pen, double top, int units, boolean first, boolean last, Leading leading) {
        double inset = leading.size() * 0.24;
        // pieces of the rail overlap a little, so that no seam shows between them
        double from = top + (first ? inset : -0.3);
        double to = top + units * leading.half() - (last ? inset : 0);
        pen.fill(pen.left(), from, leading.size() * 0.22, to - from, Mark.Ink.BLACK);
    }

    private static void teeth(Pen pen, double top, int count, Leading leading) {
        double size = leading.size();
        double pitch = 0.7 * size;
        double height = 0.62 * size;
        double x = pen.left() + 0.21 * size;
        for (int i = 0; i < count; i++) {
            double y = top + 0.24 * size + i * pitch;
            pen.shape(Mark.Ink.BLACK, x, y, x + 0.66 * size, y + height / 2, x, y + height);
        }
    }
}
