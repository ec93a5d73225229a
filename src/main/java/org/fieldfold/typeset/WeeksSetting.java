package org.fieldfold.typeset;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.manuscript.Block;
import org.fieldfold.prose.Run;

/**
 * Sets a strip calendar: months across, a row an entry with its name on the left. Where there is no room to
 * draw, a line an entry says the same in a few words; where there is none for that either, a spare one goes.
 */
final class WeeksSetting {
    /** Of the measure that names may take. */
    private static final double MOST_FOR_NAMES = 0.4;
    private static final double HAIRLINE = 0.35;
    private static final double FRAME = 0.6;
    private static final double TICK = 1.1;
    /** So that a bar of a day or two is still seen. */
    private static final double NARROWEST = 1.6;
    /** Of a line's height: the frame, and the bar inside it. */
    private static final double FRAME_HEIGHT = 0.66;
    private static final double BAR_HEIGHT = 0.34;
    /** Any year without a 29 February. */
    private static final int YEAR = 2027;

    private final Block.Weeks block;
    private final Stick stick;
    private final Leading leading;
    private final double names;
    private final double left;
    private final double width;
    private final LocalDate first;
    private final long days;

    private WeeksSetting(Block.Weeks block, Stick stick) {
        this.block = block;
        this.stick = stick;
        this.leading = stick.leading();
        double widest = block.rows().stream().mapToDouble(row -> stick.line(List.of(Run.plain(row.name())),
                Voice.TEXT, leading.small(), block.origin()).width()).max().orElse(0) + 0.01;
        this.names = Math.min(widest, MOST_FOR_NAMES * stick.measure());
        this.left = names + 0.6 * stick.size();
        this.width = stick.measure() - left;
        this.first = LocalDate.of(YEAR, block.firstMonth(), 1);
        this.days = ChronoUnit.DAYS.between(first, first.plusMonths(block.months().size()));
    }

    static Choice set(Block.Weeks block, Stick stick) {
        List<Choice.Way> ways = new ArrayList<>();
        ways.add(new Choice.Way(0, false, new WeeksSetting(block, stick).drawn(true)));
        ways.add(new Choice.Way(Cost.BRIEF / 2, true, new WeeksSetting(block, stick).drawn(false)));
        ways.add(new Choice.Way(Cost.BRIEF, true, inWords(block, stick)));
        if (block.spare()) {
            ways.add(new Choice.Way(Cost.DROPPED + Cost.BRIEF, true,
                    List.of(Strip.opening(0, 0, false, (pen, top) -> {}))));
        }
        return new Choice(block.origin(), ways);
    }

    private static List<Strip> inWords(Block.Weeks block, Stick stick) {
        List<List<Run>> lines = block.rows().stream().map(row -> List.of(Run.plain(row.name() + ": "
                + row.brief()))).toList();
        List<Strip> strips = new ArrayList<>(List.of(title(block, stick,
                TagSlot.inSection(Tag.Role.PARAGRAPH))));
        ItemsSetting.set(new Block.Items(false, lines, block.origin()), stick).closeUp().ways().get(0).strips()
                .forEach(strips::add);
        return strips;
    }

    private static Strip title(Block.Weeks block, Stick stick, TagSlot tag) {
        SetText title = stick.text(List.of(Run.strong(block.title())), Voice.HEADING, stick.size(),
                stick.measure(), block.origin());
        return Strip.opening(1, 2 * title.count(), true, (pen, top) -> {
            for (int i = 0; i < title.count(); i++) {
                title.draw(pen, i, pen.left(), stick.leading().baseline(top, 2 * (i + 1)), Mark.Ink.BLACK, tag);
            }
        });
    }

    /**
     * Nothing of it is divided: a strip without its months says nothing.
     *
     * @param named whether each bar's name and usual day stand beneath it
     */
    private List<Strip> drawn(boolean named) {
        TagSlot table = TagSlot.inSection(Tag.Role.TABLE);
        List<Strip> strips = new ArrayList<>();
        strips.add(title(block, stick, table.in(Tag.Role.CAPTION)));
        strips.add(months().kept());
        TagSlot body = table.in(Tag.Role.TABLE_BODY);
        for (Block.WeekRow row : block.rows()) {
            TagSlot tag = body.in(Tag.Role.ROW);
            TagSlot cell = tag.in(Tag.Role.CELL);
            strips.add(row(row, tag.in(Tag.Role.HEADER_CELL), cell).kept());
            if (named && !row.named().isEmpty()) {
                strips.add(named(row, cell).kept());
            }
        }
        SetText note = stick.text(block.note(), Voice.TEXT, leading.small(), stick.measure(), block.origin());
        TagSlot tag = TagSlot.inSection(Tag.Role.PARAGRAPH);
        strips.add(Strip.following(2 * note.count(), (pen, top) -> {
            for (int i = 0; i < note.count(); i++) {
                note.draw(pen, i, pen.left(), leading.baseline(top, 2 * (i + 1)), Mark.Ink.BLACK, tag);
            }
        }));
        return strips;
    }

    /** Read aloud, every row says its dates; the initials are for the eye. */
    private Strip months() {
        return Strip.following(2, (pen, top) -> {
            for (int i = 0; i < block.months().size(); i++) {
                SetText initial = stick.line(List.of(Run.plain(block.months().get(i))), Voice.TEXT,
                        leading.small(), block.origin());
                double from = x(first.plusMonths(i));
                double middle = (from + x(first.plusMonths(i + 1))) / 2;
                initial.drawSilent(pen, 0, pen.left() + middle - initial.width() / 2,
                        leading.baseline(top, 2), Mark.Ink.BLACK);
            }
        });
    }

    private Strip named(Block.WeekRow row, TagSlot cell) {
        SetText text = stick.text(List.of(Run.plain(row.named())), Voice.TEXT, leading.small(),
                stick.measure() - stick.size(), block.origin());
        TagSlot tag = cell.in(Tag.Role.PARAGRAPH);
        return Strip.following(2 * text.count(), (pen, top) -> {
            for (int i = 0; i < text.count(); i++) {
                text.draw(pen, i, pen.left() + stick.size(), leading.baseline(top, 2 * (i + 1)),
                        Mark.Ink.BLACK, tag);
            }
        });
    }

    private Strip row(Block.WeekRow row, TagSlot head, TagSlot cell) {
        SetText name = stick.text(List.of(Run.plain(row.name())), Voice.TEXT, leading.small(), names,
                block.origin());
        TagSlot figure = cell.figureIn(row.words());
        int units = 2 * Math.max(1, name.count());
        return Strip.following(units, (pen, top) -> {
            for (int i = 0; i < name.count(); i++) {
                name.draw(pen, i, pen.left(), leading.baseline(top, 2 * (i + 1)), Mark.Ink.BLACK, head);
            }
            double height = units * leading.half();
            for (int i = 0; i <= block.months().size(); i++) {
                double x = pen.left() + x(first.plusMonths(i));
                pen.line(x, top, x, top + height, HAIRLINE);
            }
            pen.bars(pen.left() + left, top, width, height, boxes(row, pen.left(), top + height / 2), figure);
        });
    }

    private List<Mark.Box> boxes(Block.WeekRow row, double panel, double middle) {
        List<Mark.Box> boxes = new ArrayList<>();
        double frame = FRAME_HEIGHT * leading.line();
        for (Block.Stretch look : row.looks()) {
            double from = x(day(look.first()));
            double to = Math.max(from + NARROWEST, x(day(look.last()).plusDays(1)));
            boxes.add(new Mark.Box(panel + from + FRAME / 2, middle - frame / 2, to - from - FRAME, frame,
                    Optional.of(Mark.Ink.WHITE), Optional.of(Mark.Ink.BLACK), FRAME));
        }
        double bar = BAR_HEIGHT * leading.line();
        for (Block.Stretch expected : row.bars()) {
            double from = x(day(expected.first()));
            double to = Math.max(from + NARROWEST, x(day(expected.last()).plusDays(1)));
            boxes.add(solid(panel + from, middle - bar / 2, to - from, bar));
            expected.usual().ifPresent(usual -> boxes.add(solid(panel + x(day(usual)), middle
                    - 0.44 * leading.line(), TICK, 0.88 * leading.line())));
        }
        return boxes;
    }

    private static Mark.Box solid(double x, double y, double width, double height) {
        return new Mark.Box(x, y, width, height, Optional.of(Mark.Ink.BLACK), Optional.empty(), 0);
    }

    private static LocalDate day(MonthDay day) {
        return day.atYear(YEAR);
    }

    private double x(LocalDate date) {
        long at = Math.max(0, Math.min(days, ChronoUnit.DAYS.between(first, date)));
        return left + width * at / days;
    }
}
