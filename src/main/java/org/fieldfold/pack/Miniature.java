package org.fieldfold.pack;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.SetPanel;
import org.fieldfold.typeset.TypeMetrics;

/**
 * What a set guide looks like from afar: each line of text a stroke as long as the line, and boxes as they
 * are; drawings are left out, as a page with all of them would be heavy. Enough to tell one sheet from
 * another, and its front from its back.
 *
 * @param ink of the guide's titles, {@code #rrggbb}
 * @param panels by their place in reading order
 */
public record Miniature(String ink, Map<Integer, Panel> panels) {
    /**
     * One panel, in its own upright frame, as path data in units of {@link #UNIT} points.
     *
     * @param lines of text in black
     * @param titles lines of text in the guide's ink
     * @param black what is filled with black, {@code inked} what is filled with the guide's ink
     */
    record Panel(String lines, String titles, String black, String inked) {
    }

    /** Points. Coarse enough for short paths, fine enough for three lines of type to stay three. */
    static final double UNIT = 3;

    /** A line whose stretches of type touch is one line. */
    private static final double TOUCHING = 4;

    /**
     * The miniature.
     *
     * @param ink of the guide's titles
     */
    public static Miniature of(List<SetPanel> panels, String ink, TypeMetrics metrics) {
        Map<Integer, Panel> all = new TreeMap<>();
        for (SetPanel panel : panels) {
            all.put(panel.reading(), new Pencil(ink, metrics).panel(panel));
        }
        return new Miniature(ink, all);
    }

    /** Draws one panel. */
    private static final class Pencil {
        private final String ink;
        private final TypeMetrics metrics;
        private final StringBuilder lines = new StringBuilder();
        private final StringBuilder titles = new StringBuilder();
        private final StringBuilder black = new StringBuilder();
        private final StringBuilder inked = new StringBuilder();
        private double from;
        private double to = Double.NaN;
        /** What the last stretch ends with, its space. */
        private double blank;
        private double height;
        private boolean title;

        Pencil(String ink, TypeMetrics metrics) {
            this.ink = ink;
            this.metrics = metrics;
        }

        Panel panel(SetPanel panel) {
            for (Mark mark : panel.marks()) {
                if (mark instanceof Mark.Words words) {
                    words(words);
                } else if (mark instanceof Mark.Box box) {
                    box(box);
                } else if (mark instanceof Mark.Bars bars) {
                    bars.boxes().forEach(this::box);
                } else if (mark instanceof Mark.Stroke stroke) {
                    black.append("M").append(whole(stroke.x1())).append(' ').append(whole(stroke.y1()))
                            .append('L').append(whole(stroke.x2())).append(' ').append(whole(stroke.y2()));
                } else if (mark instanceof Mark.SquareCode code) {
                    rectangle(black, code.x(), code.y(), code.size(), code.size());
                }
            }
            finish();
            return new Panel(lines.toString(), titles.toString(), black.toString(), inked.toString());
        }

        private void words(Mark.Words words) {
            if (words.ink().equals(Mark.Ink.WHITE)) {
                return;
            }
            double middle = words.baseline() - words.size() * metrics.capHeight(words.face()) / 2000;
            boolean inInk = words.ink().rgb().equals(ink);
            if (middle != height || inInk != title || !(Math.abs(words.x() - to) < TOUCHING)) {
                finish();
                from = words.x();
                height = middle;
                title = inInk;
            }
            to = words.x() + width(words, words.text());
            blank = to - words.x() - width(words, words.text().stripTrailing());
        }

        private double width(Mark.Words words, String text) {
            return words.size() * metrics.width(words.face(), text) / 1000;
        }

        private void finish() {
            if (!Double.isNaN(to) && to - blank > from) {
                (title ? titles : lines).append('M').append(whole(from)).append(' ').append(whole(height))
                        .append('h').append(whole(to - blank - from));
            }
            to = Double.NaN;
        }

        private void box(Mark.Box box) {
            box.fill().filter(fill -> !fill.equals(Mark.Ink.WHITE)).ifPresent(fill ->
                    rectangle(fill.rgb().equals(ink) ? inked : black, box.x(), box.y(), box.width(), box.height()));
        }

        private static void rectangle(StringBuilder path, double x, double y, double width, double height) {
            path.append('M').append(whole(x)).append(' ').append(whole(y)).append('h').append(whole(width))
                    .append('v').append(whole(height)).append('h').append(whole(-width)).append('z');
        }

        private static String whole(double points) {
            return Long.toString(StrictMath.round(points / UNIT));
        }
    }
}
