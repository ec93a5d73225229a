package org.fieldfold.typeset;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Draws on one panel, inside one section of the logical tree.
 *
 * @param made the tags that this drawing has made, by the slots that they were made for
 * @param left edge of the measure, in the panel's frame
 */
record Pen(List<Mark> marks, Map<TagSlot, Tag> made, Tag section, double left) {
    /** The tag of a slot, made when it is first asked for. */
    Tag tag(TagSlot slot) {
        Tag known = made.get(slot);
        if (known == null) {
            Tag around = slot.parent().map(this::tag).orElse(section);
            boolean said = slot.expansion().isPresent() && made.values().stream()
                    .anyMatch(tag -> tag.expansion().equals(slot.expansion().get()));
            known = said ? around : slot.make(around);
            made.put(slot, known);
        }
        return known;
    }

    void words(double x, double baseline, Piece piece, double size, Mark.Ink ink, Optional<TagSlot> tag) {
        marks.add(new Mark.Words(x, baseline, piece.face(), size, ink, piece.text(),
                tag.map(this::tag)));
    }

    void link(double x, double y, double width, double height, String address, TagSlot tag) {
        marks.add(new Mark.LinkArea(x, y, width, height, address, tag(tag)));
    }

    void drawing(String figure, double x, double y, double width, double height, TagSlot tag) {
        marks.add(new Mark.Drawing(figure, x, y, width, height, tag(tag)));
    }

    void code(String address, double x, double y, double size, TagSlot tag) {
        marks.add(new Mark.SquareCode(address, x, y, size, tag(tag)));
    }

    void bars(double x, double y, double width, double height, List<Mark.Box> boxes, TagSlot tag) {
        marks.add(new Mark.Bars(x, y, width, height, boxes, tag(tag)));
    }

    void line(double x1, double y1, double x2, double y2, double width) {
        marks.add(new Mark.Stroke(x1, y1, x2, y2, width, Mark.Ink.BLACK));
    }

    void fill(double x, double y, double width, double height, Mark.Ink ink) {
        marks.add(new Mark.Box(x, y, width, height, Optional.of(ink), Optional.empty(), 0));
    }

    void frame(double x, double y, double width, double height, double lineWidth) {
        // the line lies inside the box, so that boxes and rules end at one edge
        double in = lineWidth / 2;
        marks.add(new Mark.Box(x + in, y + in, width - lineWidth, height - lineWidth, Optional.empty(),
                Optional.of(Mark.Ink.BLACK), lineWidth));
    }

    void shape(Mark.Ink ink, Double... points) {
        marks.add(new Mark.Shape(List.of(points), ink));
    }
}
