package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.manuscript.Block;
import org.fieldfold.prose.Run;

/**
 * Sets a count card for the wall: a drawing on the left, the name in large letters and what to look at beside
 * it, and the number to act at, as large as its black field allows, on the right.
 */
final class WallCardSetting {
    private static final double DRAWING = 0.18;
    private static final double FIELD = 0.21;
    private static final double NAME = 1.45;
    /** Half lines of a line of the name: 120 % of leading and more. */
    private static final int NAME_ROW = 3;
    private static final double NUMBER = 4.6;
    private static final double SMALLEST_NUMBER = 2.8;
    private static final double RULE = 1.2;
    /** Of a drawing that is looked at from an arm's length. */
    private static final double LOWEST = 15 * 72 / 25.4;

    private final Block.WallCard card;
    private final Stick stick;
    private final Leading leading;
    private final double gutter;
    private final double pictures;
    private final double field;
    private final double middle;
    private final SetText name;
    private final SetText look;
    private final Optional<Stick> captions;

    private WallCardSetting(Block.WallCard card, Stick stick) {
        this.card = card;
        this.stick = stick;
        this.leading = stick.leading();
        this.gutter = 0.9 * stick.size();
        this.pictures = DRAWING * stick.measure();
        this.field = card.number().isEmpty() ? 0 : FIELD * stick.measure();
        this.middle = stick.measure() - pictures - gutter - (field == 0 ? 0 : field + gutter);
        this.name = stick.text(List.of(Run.plain(card.name())), Voice.HEADING, NAME * stick.size(), middle,
                card.origin());
        this.look = stick.body(card.look(), middle, card.origin());
        this.captions = card.plate().map(plate -> stick.narrower(stick.measure() - pictures));
    }

    static Choice set(Block.WallCard card, Stick stick, Outline outline) {
        return new WallCardSetting(card, stick).choice(outline);
    }

    private Choice choice(Outline outline) {
        int words = NAME_ROW * name.count() + 2 * look.count();
        int least = Math.max(words, field == 0 ? 0 : fieldUnits());
        int most = least;
        if (card.plate().isPresent()) {
            double aspect = stick.shapes().aspect(card.plate().get().figure());
            least = Math.max(least, leading.units(Math.min(LOWEST, pictures / aspect)) + captionUnits());
            most = Math.max(least, leading.units(pictures / aspect) + captionUnits());
        }
        List<Choice.Way> ways = new ArrayList<>();
        for (int units = most; units >= least; units--) {
            int height = units;
            Tags tags = new Tags(TagSlot.inSection(outline.heading()),
                    TagSlot.inSection(Tag.Role.PARAGRAPH), TagSlot.inSection(Tag.Role.PARAGRAPH),
                    TagSlot.figure(card.plate().map(Block.Plate::alt).orElse(card.name())));
            ways.add(new Choice.Way((most - units) * Cost.PLATE, false, List.of(
                    Strip.opening(1, height, false, (pen, top) -> draw(pen, top, height, tags)))));
        }
        return new Choice(card.origin(), ways);
    }

    private record Tags(TagSlot name, TagSlot look, TagSlot number, TagSlot figure) {}

    private SetText caption() {
        return captions.orElseThrow().text(List.of(Run.plain(PlateSetting.caption(card.plate()
                .orElseThrow()))), Voice.TEXT, leading.small(), pictures, card.origin());
    }

    private int captionUnits() {
        return 2 * caption().count() + 2;
    }

    private int fieldUnits() {
        double cap = stick.metrics().capHeight(Face.BOLD) / 1000 * SMALLEST_NUMBER * stick.size();
        return leading.units(words() + cap);
    }

    /** Height of what stands in the field besides the number's capitals, with white above and below. */
    private double words() {
        return (fieldText(card.above()).count() + fieldText(card.below()).count()) * leading.line()
                + 2.6 * leading.half();
    }

    private SetText fieldText(String words) {
        return stick.body(List.of(Run.plain(words)), field - gutter, card.origin());
    }

    /** As large as the field is wide and high. */
    private SetText number(double height) {
        List<Run> runs = List.of(Run.strong(card.number()));
        double cap = stick.metrics().capHeight(Face.BOLD) / 1000;
        double size = Math.min(NUMBER * stick.size(), (height - words()) / cap);
        SetText line = stick.line(runs, Voice.HEADING, size, card.origin());
        double room = field - gutter;
        return line.width() <= room ? line : stick.line(runs, Voice.HEADING,
                size * room / line.width() * (1 - 1e-9), card.origin());
    }

    /** In reading order: name, picture, what to look at, number. */
    private void draw(Pen pen, double top, int units, Tags tags) {
        double height = units * leading.half();
        double x = pen.left() + pictures + gutter;
        pen.line(pen.left(), top - 0.5 * leading.half(), pen.left() + stick.measure(),
                top - 0.5 * leading.half(), RULE);
        for (int i = 0; i < name.count(); i++) {
            name.draw(pen, i, x, leading.baseline(top, NAME_ROW * (i + 1)), stick.ink(), tags.name());
        }
        card.plate().ifPresent(plate -> picture(plate, pen, top, height, tags.figure()));
        for (int i = 0; i < look.count(); i++) {
            look.draw(pen, i, x, leading.baseline(top, NAME_ROW * name.count() + 2 * (i + 1)),
                    Mark.Ink.BLACK, tags.look());
        }
        if (field > 0) {
            number(pen, top, height, tags.number());
        }
    }

    private void picture(Block.Plate plate, Pen pen, double top, double height, TagSlot figure) {
        SetText caption = caption();
        double room = height - captionUnits() * leading.half();
        double aspect = stick.shapes().aspect(plate.figure());
        double width = Math.min(pictures, room * aspect);
        double high = width / aspect;
        double centre = pen.left() + pictures / 2;
        pen.drawing(plate.figure(), centre - width / 2, top + (room - high) / 2, width, high, figure);
        PlateSetting.bar(plate, pictures, stick, pen, centre, top + room + 0.9 * leading.half());
        TagSlot tag = figure.in(Tag.Role.CAPTION);
        for (int i = 0; i < caption.count(); i++) {
            caption.draw(pen, i, centre - caption.width(i) / 2, leading.baseline(top + room, 3 + 2 * i),
                    Mark.Ink.BLACK, tag);
        }
    }

    private void number(Pen pen, double top, double height, TagSlot tag) {
        double left = pen.left() + stick.measure() - field;
        pen.fill(left, top, field, height, Mark.Ink.BLACK);
        SetText above = fieldText(card.above());
        SetText number = number(height);
        SetText below = fieldText(card.below());
        double cap = stick.metrics().capHeight(Face.BOLD) / 1000;
        double tall = (above.count() + below.count()) * leading.line() + number.size() * cap
                + leading.half();
        double y = top + (height - tall) / 2;
        y = centred(above, pen, left, y, tag);
        double baseline = y + 0.5 * leading.half() + number.size() * cap;
        number.draw(pen, 0, left + (field - number.width()) / 2, baseline, Mark.Ink.WHITE, tag, true);
        centred(below, pen, left, baseline + 0.5 * leading.half(), tag);
    }

    private double centred(SetText text, Pen pen, double left, double top, TagSlot tag) {
        for (int i = 0; i < text.count(); i++) {
            text.draw(pen, i, left + (field - text.width(i)) / 2, leading.baseline(top, 2 * (i + 1)),
                    Mark.Ink.WHITE, tag, true);
        }
        return top + text.count() * leading.line();
    }
}
