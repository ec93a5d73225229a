package org.fieldfold.typeset;

import java.util.List;
import java.util.Optional;

/**
 * Something drawn on a panel, in the panel's own upright frame: points, origin at the panel's top left
 * corner, x to the right, y down. A mark without a tag is an artifact: seen, and passed over when the sheet
 * is read aloud.
 */
public sealed interface Mark {
    /** An ink, {@code #rrggbb}. */
    record Ink(String rgb) {
        public static final Ink BLACK = new Ink("#000000");
        public static final Ink WHITE = new Ink("#ffffff");
    }

    /**
     * A stretch of one line in one face. {@code text} ends with its space where one follows, so that words
     * stay apart.
     */
    record Words(double x, double baseline, Face face, double size, Ink ink, String text, Optional<Tag> tag)
            implements Mark {}

    /** A straight line. */
    record Stroke(double x1, double y1, double x2, double y2, double width, Ink ink) implements Mark {}

    /** A box, filled or drawn as an outline. */
    record Box(double x, double y, double width, double height, Optional<Ink> fill, Optional<Ink> outline,
            double lineWidth) implements Mark {}

    /** A closed shape of straight edges, filled: x1, y1, x2, y2 and so on. */
    record Shape(List<Double> points, Ink fill) implements Mark {}

    /** A figure in its box. */
    record Drawing(String figure, double x, double y, double width, double height, Tag tag) implements Mark {}

    /** A square code with its quiet zone inside the box. */
    record SquareCode(String address, double x, double y, double size, Tag tag) implements Mark {}

    /** A drawing of boxes, seen and read as one figure. */
    record Bars(double x, double y, double width, double height, List<Box> boxes, Tag tag) implements Mark {
        public Bars {
            boxes = List.copyOf(boxes);
        }
    }

    /** Where a finger or a mouse follows a link. */
    record LinkArea(double x, double y, double width, double height, String address,
            Tag tag) implements Mark {}
}
