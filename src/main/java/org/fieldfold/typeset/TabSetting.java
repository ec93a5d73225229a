package org.fieldfold.typeset;

import java.util.List;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/** Sets the thumb tab of an entry at the head of its panel, a step further along with each entry. */
final class TabSetting {
    /** Half lines that the head of every inner panel keeps for it, with the white below. */
    static final int UNITS = 4;
    private static final int HEIGHT = 3;
    private static final double SHARE = 0.2;

    private TabSetting() {}

    /**
     * @param tab number of the entry, from 1
     * @param tabs how many entries there are
     */
    static void draw(int tab, int tabs, Stick stick, Pen pen, double top, Span origin) {
        double width = SHARE * stick.measure();
        double step = tabs < 2 ? 0 : Math.min(width * 1.06, (stick.measure() - width) / (tabs - 1));
        double x = pen.left() + (tab - 1) * step;
        double height = HEIGHT * stick.leading().half();
        pen.fill(x, top, width, height, stick.ink());
        double size = 1.2 * stick.size();
        SetText number = stick.line(List.of(Run.plain(Integer.toString(tab))), Voice.HEADING, size, origin);
        double cap = stick.metrics().capHeight(Face.BOLD) / 1000 * size;
        number.drawSilent(pen, 0, x + (width - number.width()) / 2, top + (height + cap) / 2, Mark.Ink.WHITE);
    }
}
