package org.fieldfold.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.TypeMetrics;

/**
 * The strip along one edge of the sheet in which an office printer still prints and no panel has its content:
 * from 4.3 to 6.25 mm from the edge. Things are laid along it, side by side; {@code depth} counts from the
 * edge inwards.
 */
final class Band {
    /** Where printers begin to print (value from memory: laser about 4.2 mm), in points. */
    static final double OUTER = 4.3 * 72 / 25.4;
    /** Where it ends: a hair outside the live areas, which begin at 6.35 mm. */
    static final double INNER = 17.75;
    static final double HAIRLINE = 0.25;
    static final double TYPE = 6;
    static final double GAP = 4;
    /** How far letters sink below the line, and how high small letters with accents, and digits, stand. */
    private static final double DESCENT = 0.222 * TYPE;
    private static final double ASCENT = 0.793 * TYPE;
    static final double DIGIT = 0.662 * TYPE;
    /** Lines of type fill the band and the tenth of a millimetre on either side of it. */
    static final double FEET_OUT = 18 - 0.02 - ASCENT;
    private static final double HEAD_OUT = 18 - 0.02 - DESCENT;

    /** The four edges. Along the left and the right one, type runs up the page. */
    enum Edge { TOP, BOTTOM, LEFT, RIGHT }

    private record Stretch(double from, double to) {}

    private final Edge edge;
    private final double sheetWidth;
    private final double sheetHeight;
    private final TypeMetrics metrics;
    private final List<Stretch> taken = new ArrayList<>();
    private final List<Stretch> folds = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final List<Rising> rising = new ArrayList<>();
    private boolean light;

    /** A line of type that runs up the page, y down. */
    record Rising(double x, double y, String text) {}

    Band(Edge edge, double sheetWidth, double sheetHeight, TypeMetrics metrics) {
        this.edge = edge;
        this.sheetWidth = sheetWidth;
        this.sheetHeight = sheetHeight;
        this.metrics = metrics;
        taken.add(new Stretch(0, OUTER));
        taken.add(new Stretch(length() - OUTER, length()));
    }

    /** Notes that lines of type begin along it, so that scales had better stand elsewhere. */
    void keepLight() {
        light = true;
    }

    boolean isLight() {
        return light;
    }

    boolean level() {
        return edge == Edge.BOTTOM || edge == Edge.TOP;
    }

    /** Length of the edge. */
    double length() {
        return level() ? sheetWidth : sheetHeight;
    }

    /** Keeps a stretch free of all else. */
    void take(double from, double to) {
        taken.add(new Stretch(from, to));
    }

    /** Notes a fold mark: only the bar may run past it. */
    void takeFold(double at) {
        folds.add(new Stretch(at, at));
    }

    /** Where something of this length can stand, at the lowest place from {@code after} on. */
    Optional<Double> room(double length, double after, boolean pastFolds) {
        List<Stretch> all = new ArrayList<>(taken);
        if (!pastFolds) {
            all.addAll(folds);
        }
        all.sort(Comparator.comparingDouble(Stretch::from));
        double at = after;
        for (Stretch one : all) {
            // the longest room there is must be found in spite of rounding
            if (at + length + GAP <= one.from + 1e-6) {
                return Optional.of(at);
            }
            at = Math.max(at, one.to + GAP);
        }
        return Optional.empty();
    }

    /** The longest stretch that nothing stands on. */
    double longestRoom() {
        List<Stretch> all = new ArrayList<>(taken);
        all.addAll(folds);
        all.sort(Comparator.comparingDouble(Stretch::from));
        double longest = 0;
        double at = 0;
        for (Stretch one : all) {
            longest = Math.max(longest, one.from - GAP - at);
            at = Math.max(at, one.to + GAP);
        }
        return longest;
    }

    /** Writes words in the first place that has room; says whether there is one. */
    boolean write(String text, double after) {
        Optional<Double> at = room(width(text), after, false);
        at.ifPresent(from -> {
            type(from, feetOut() ? FEET_OUT : HEAD_OUT, text);
            take(from, from + width(text));
        });
        return at.isPresent();
    }

    /**
     * Writes words right beside a place, behind it or else before it; says whether there is room.
     *
     * @param away from the place to the words
     */
    boolean writeBeside(String text, double at, double away) {
        double width = width(text);
        for (double from : new double[] {at + away, at - away - width}) {
            if (isFree(from, from + width)) {
                type(from, feetOut() ? FEET_OUT : HEAD_OUT, text);
                // what is written next must not be read on with it
                take(from, from + width + 2 * GAP);
                return true;
            }
        }
        return false;
    }

    private boolean isFree(double from, double to) {
        return taken.stream().noneMatch(one -> one.from < to + GAP && from - GAP < one.to)
                && folds.stream().noneMatch(one -> one.from < to + 1 && from - 1 < one.to);
    }

    double width(String text) {
        return metrics.width(Face.REGULAR, text) * TYPE / 1000;
    }

    /** Writes a number that ends at the inner side of the band. */
    void number(double at, String digits) {
        type(at, feetOut() ? INNER - DIGIT + 0.1 : INNER + 0.1, digits);
    }

    private boolean feetOut() {
        return edge == Edge.BOTTOM || edge == Edge.RIGHT;
    }

    private void type(double at, double baseline, String text) {
        double x = x(at, baseline);
        double y = y(at, baseline);
        if (level()) {
            marks.add(new Mark.Words(x, y, Face.REGULAR, TYPE, Mark.Ink.BLACK, text, Optional.empty()));
        } else {
            rising.add(new Rising(x, y, text));
        }
    }

    void stroke(double at, double depth, double toAt, double toDepth) {
        marks.add(new Mark.Stroke(x(at, depth), y(at, depth), x(toAt, toDepth), y(toAt, toDepth), HAIRLINE,
                Mark.Ink.BLACK));
    }

    private double x(double at, double depth) {
        return switch (edge) {
            case BOTTOM, TOP -> at;
            case LEFT -> depth;
            case RIGHT -> sheetWidth - depth;
        };
    }

    private double y(double at, double depth) {
        return switch (edge) {
            case BOTTOM -> sheetHeight - depth;
            case TOP -> depth;
            case LEFT, RIGHT -> sheetHeight - at;
        };
    }

    void draw(PanelWriter writer) {
        marks.forEach(writer::draw);
        rising.forEach(line -> writer.rising(line.x(), line.y(), TYPE, line.text()));
    }
}
