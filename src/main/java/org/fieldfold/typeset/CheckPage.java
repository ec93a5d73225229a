package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/** Writes one side of the sheet that is printed first: steps, one below another, in two columns. */
final class CheckPage {
    static final double MM = 72 / 25.4;
    /** From the centre of an arrow, of the rings or of the cross to the side of the sheet. */
    static final double ASIDE = 84;
    /** Where they stand on both sides, from the head of the sheet. */
    static final double ARROW_AT = 112;
    static final double RINGS_AT = 392;
    private static final double HEADING = 1.4;
    private static final double SQUARE = 1.9;

    private final List<Mark> marks = new ArrayList<>();
    private final Map<TagSlot, Tag> made = new IdentityHashMap<>();
    private final Map<String, Tag> sections = new HashMap<>();
    private final Phrases phrases;
    private final Stick stick;
    private final Span origin;
    private final Frame frame;
    private double left;
    private double y;
    private Pen pen;

    CheckPage(Phrases phrases, Stick stick, Span origin, Frame frame) {
        this.phrases = phrases;
        this.stick = stick;
        this.origin = origin;
        this.frame = frame;
    }

    List<Mark> marks() {
        return marks;
    }

    /** Width of a column. */
    double column() {
        return (frame.width() - gutter()) / 2 - 2 * inset();
    }

    private static double inset() {
        return 12;
    }

    private static double gutter() {
        return 8;
    }

    /** Goes on at the head of a column, 0 or 1. */
    void begin(int column) {
        left = frame.left() + inset() + column * (column() + 2 * inset() + gutter());
        y = frame.top() + 10;
    }

    void down(double points) {
        y += points;
    }

    void to(double top) {
        y = top;
    }

    double y() {
        return y;
    }

    double left() {
        return left;
    }

    Pen pen() {
        return pen;
    }

    /** Begins a section of the logical tree, or goes on with it. */
    void section(Tag document, String name) {
        pen = new Pen(marks, made, sections.computeIfAbsent(name, document::addSection), left);
    }

    String say(String key, Object... parts) {
        return phrases.say(key, parts);
    }

    /** The heading of a step, its number in white on black. */
    void step(Tag document, int number, String key, double indent, double width) {
        section(document, number + " " + say(key));
        double x = left + indent;
        double side = SQUARE * stick.size();
        TagSlot tag = TagSlot.inSection(Tag.Role.H2);
        pen.fill(x, y, side, side, Mark.Ink.BLACK);
        SetText digit = stick.line(List.of(Run.plain(Integer.toString(number))), Voice.HEADING,
                HEADING * stick.size(), origin);
        double baseline = y + (side + stick.metrics().capHeight(Face.BOLD) / 1000 * digit.size()) / 2;
        digit.draw(pen, 0, x + (side - digit.width()) / 2, baseline, Mark.Ink.WHITE, tag, true);
        double from = side + 8;
        SetText words = stick.text(List.of(Run.plain(say(key))), Voice.HEADING, HEADING * stick.size(),
                width - indent - from, origin);
        for (int i = 0; i < words.count(); i++) {
            words.draw(pen, i, x + from, baseline + i * 1.2 * words.size(), Mark.Ink.BLACK, tag);
        }
        y += side + (words.count() - 1) * 1.2 * words.size() + 4;
    }

    /** A paragraph; what stands before a bar in its words is set strong. */
    void text(String words, double indent, double width) {
        String[] parts = words.split("\\|", 2);
        List<Run> runs = parts.length == 1 ? List.of(Run.plain(words))
                : List.of(Run.strong(parts[0]), Run.plain(" " + parts[1]));
        runs(runs, indent, width, Tag.Role.PARAGRAPH, Voice.TEXT, stick.size());
    }

    void runs(List<Run> runs, double indent, double width, Tag.Role role, Voice voice, double size) {
        SetText text = stick.text(runs, voice, size, width, origin);
        TagSlot tag = TagSlot.inSection(role);
        double line = 1.25 * size;
        for (int i = 0; i < text.count(); i++) {
            text.draw(pen, i, left + indent, y + line * (i + 0.8), Mark.Ink.BLACK, tag);
        }
        y += line * text.count() + 0.4 * size;
    }

    /** A drawing of our own, its left upper corner at {@code x} from the left of the column. */
    void drawing(String name, String alt, double x, double width) {
        String figure = PrintMeFirst.figure(name);
        double height = width / stick.shapes().aspect(figure);
        pen.drawing(figure, left + x, y, width, height, TagSlot.figure(say(alt)));
        y += height;
    }

    /** A bar of 100 mm, level or upright, with a tick at each millimetre and a number at each ten. */
    void bar(double x, double top, boolean level) {
        line(x, top, 0, 0, 100, 0, level, 1.1);
        for (int mm = 0; mm <= 100; mm++) {
            double tick = mm % 10 == 0 ? 4.2 : mm % 5 == 0 ? 3 : 1.8;
            line(x, top, mm, 0, mm, tick, level, mm % 10 == 0 ? 0.8 : 0.4);
            if (mm % 10 == 0) {
                SetText number = stick.line(List.of(Run.plain(Integer.toString(mm))), Voice.TEXT, 8, origin);
                double along = mm * MM;
                number.drawSilent(pen, 0, level ? x + along - number.width() / 2 : x + 5.2 * MM,
                        level ? top - 5 * MM : top + along + 2.8, Mark.Ink.BLACK);
            }
        }
    }

    /** A line between two points in millimetres along and across a bar. */
    private void line(double x, double y0, double along, double across, double toAlong, double toAcross,
            boolean level, double width) {
        double a = along * MM;
        double b = across * MM;
        double c = toAlong * MM;
        double d = toAcross * MM;
        if (level) {
            pen.line(x + a, y0 - b, x + c, y0 - d, width);
        } else {
            pen.line(x + b, y0 + a, x + d, y0 + c, width);
        }
    }

    /** A broad arrow that points up. */
    void arrow(double centre, double middle) {
        double half = 50;
        double w = 15;
        pen.shape(Mark.Ink.BLACK, centre, middle - half, centre + 2.3 * w, middle - half + 40, centre + w,
                middle - half + 40, centre + w, middle + half, centre - w, middle + half, centre - w,
                middle - half + 40, centre - 2.3 * w, middle - half + 40);
    }

    /** Square rings, 1 mm apart, the third one thick. */
    void rings(double centre, double middle) {
        for (int mm = 1; mm <= 6; mm++) {
            double r = mm * MM;
            double width = mm == 3 ? 1.5 : 0.45;
            pen.frame(centre - r - width / 2, middle - r - width / 2, 2 * r + width, 2 * r + width, width);
        }
        for (int mm : new int[] {3, 6}) {
            SetText label = stick.line(List.of(Run.plain(mm + " mm")), Voice.TEXT, 8, origin);
            double at = middle - mm * MM;
            pen.line(centre + mm * MM, at, centre + 8.4 * MM, at, 0.45);
            label.drawSilent(pen, 0, centre + 8.8 * MM, at + 2.8, Mark.Ink.BLACK);
        }
    }

    /** A fine cross: where its lines meet is to be read among the rings. */
    void cross(double centre, double middle) {
        double arm = 9 * MM;
        pen.line(centre - arm, middle, centre + arm, middle, 0.7);
        pen.line(centre, middle - arm, centre, middle + arm, 0.7);
    }

    /** Words and a line behind them to write on, one below another. */
    void blanks(double width, String... keys) {
        for (String key : keys) {
            SetText words = stick.line(List.of(Run.plain(say(key))), Voice.TEXT, stick.size(), origin);
            y += 2 * stick.size();
            words.draw(pen, 0, left, y, Mark.Ink.BLACK, TagSlot.inSection(Tag.Role.PARAGRAPH));
            pen.line(left + words.width() + 6, y + 1.5, left + width, y + 1.5, 0.5);
        }
        y += 6;
    }

    void foot(Manuscript manuscript, int reading, Pen at) {
        new FootSetting(manuscript, reading, stick.narrower(stick.measure() - frame.width()), origin)
                .draw(at, frame.bottom(), reading == 1);
    }

    Pen whole(Tag section) {
        return new Pen(marks, made, section, frame.left());
    }
}
