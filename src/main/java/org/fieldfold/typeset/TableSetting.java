package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import org.fieldfold.manuscript.Block;
import org.fieldfold.prose.Run;

/**
 * Sets tables: columns sized to what stands in them, numbers to the right, a rule beneath the header and the
 * end.
 */
final class TableSetting {
    private static final double RULE = 0.8;
    private static final double HAIRLINE = 0.35;
    /** A table of no more rows than this stays on one panel. */
    private static final int HELD = 10;

    private final Block.Grid grid;
    private final Stick stick;
    private final double gutter;
    private final double[] widths;
    private final boolean[] right;
    private final TagSlot table = TagSlot.inSection(Tag.Role.TABLE);

    private TableSetting(Block.Grid grid, Stick stick) {
        this.grid = grid;
        this.stick = stick;
        this.gutter = 0.9 * stick.size();
        int columns = grid.header().size();
        List<Double> least = new ArrayList<>();
        List<Double> most = new ArrayList<>();
        this.right = new boolean[columns];
        for (int column = 0; column < columns; column++) {
            double word = widestWord(grid.header().get(column), small());
            double cell = width(grid.header().get(column), small());
            right[column] = column > 0 && !grid.rows().isEmpty();
            for (List<List<Run>> row : grid.rows()) {
                word = Math.max(word, widestWord(row.get(column), stick.size()));
                cell = Math.max(cell, width(row.get(column), stick.size()));
                right[column] &= isNumber(row.get(column));
            }
            // a breath more than it needs, so that rounding never breaks a cell
            least.add(word + 0.01);
            most.add(cell + 0.01);
        }
        this.widths = TableColumns.widths(least, most, stick.measure() - gutter * Math.max(0, columns - 1));
    }

    static Choice set(Block.Grid grid, Stick stick) {
        List<Choice.Way> ways = new ArrayList<>();
        ways.add(new Choice.Way(0, false, new TableSetting(grid, stick).strips()));
        if (!grid.brief().isEmpty()) {
            Block.Grid brief = new Block.Grid(grid.caption(), grid.header(), grid.brief(), grid.origin());
            ways.add(new Choice.Way(Cost.THINNED, true, new TableSetting(brief, stick).strips()));
        }
        if (grid.spare()) {
            ways.add(new Choice.Way(Cost.SPARED, true,
                    List.of(Strip.opening(0, 0, false, (pen, top) -> {}))));
        }
        return new Choice(grid.origin(), ways);
    }

    /** Of the header, which is told from a heading above it by its size. */
    private double small() {
        return stick.leading().small();
    }

    private double widestWord(List<Run> runs, double size) {
        return stick.widestWord(runs, Voice.TEXT, size, grid.origin());
    }

    private double width(List<Run> runs, double size) {
        return stick.line(runs, Voice.TEXT, size, grid.origin()).width();
    }

    private static boolean isNumber(List<Run> runs) {
        StringBuilder text = new StringBuilder();
        runs.forEach(run -> text.append(run.text()));
        String cell = text.toString().strip();
        return cell.isEmpty() || cell.equals("–") || Bindings.isNumber(cell.replaceAll("[\\s\u00a0]*[%°]$",
                ""));
    }

    private List<Strip> strips() {
        List<Strip> strips = new ArrayList<>();
        if (!grid.caption().isBlank()) {
            SetText caption = stick.text(List.of(Run.plain(grid.caption())), Voice.HEADING, stick.size(),
                    stick.measure(), grid.origin());
            TagSlot tag = table.in(Tag.Role.CAPTION);
            strips.add(Strip.opening(1, 2 * caption.count(), true, (pen, top) -> {
                for (int i = 0; i < caption.count(); i++) {
                    double baseline = stick.leading().baseline(top, 2 * (i + 1));
                    caption.draw(pen, i, pen.left(), baseline, Mark.Ink.BLACK, tag);
                }
            }));
        }
        Strip head = row(grid.header(), small(), table.in(Tag.Role.TABLE_HEAD), Tag.Role.HEADER_CELL, RULE);
        strips.add(strips.isEmpty() ? Strip.opening(1, head.units(), true, head.draw()) : head.kept());
        Strip.Head again = new Strip.Head(head.units(), this::headAgain);
        TagSlot body = table.in(Tag.Role.TABLE_BODY);
        for (int i = 0; i < grid.rows().size(); i++) {
            boolean last = i == grid.rows().size() - 1;
            Strip strip = row(grid.rows().get(i), stick.size(), body, Tag.Role.CELL, last ? RULE : HAIRLINE);
            boolean held = !last && (grid.rows().size() <= HELD || i == 0 || i == grid.rows().size() - 2);
            Strip under = i == 0 ? strip : strip.under(again);
            strips.add(held ? under.kept() : under);
        }
        return grid.rows().isEmpty() ? unkept(strips) : strips;
    }

    private static List<Strip> unkept(List<Strip> strips) {
        Strip last = strips.remove(strips.size() - 1);
        strips.add(new Strip(last.gap(), last.opens(), last.breaking(), last.units(), false, last.draw()));
        return strips;
    }

    /** The header where the table goes on, which is not read a second time. */
    private void headAgain(Pen pen, double top) {
        double x = pen.left();
        int lines = 1;
        for (int column = 0; column < widths.length; column++) {
            SetText text = stick.text(grid.header().get(column), Voice.TEXT, small(), widths[column],
                    grid.origin());
            for (int i = 0; i < text.count(); i++) {
                double shift = right[column] ? widths[column] - text.width(i) : 0;
                text.drawSilent(pen, i, x + shift, stick.leading().baseline(top, 2 * (i + 1)),
                        Mark.Ink.BLACK);
            }
            lines = Math.max(lines, text.count());
            x += widths[column] + gutter;
        }
        double y = top + 2 * lines * stick.leading().half();
        pen.line(pen.left(), y, x - gutter, y, RULE);
    }

    private Strip row(List<List<Run>> cells, double size, TagSlot parent, Tag.Role role, double rule) {
        List<SetText> texts = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            texts.add(stick.text(cells.get(i), Voice.TEXT, size, widths[i], grid.origin()));
        }
        TagSlot tag = parent.in(Tag.Role.ROW);
        List<TagSlot> tags = cells.stream().map(cell -> tag.in(role)).toList();
        int units = 2 * texts.stream().mapToInt(SetText::count).max().orElse(1);
        return Strip.following(units, (pen, top) -> {
            double x = pen.left();
            for (int column = 0; column < texts.size(); column++) {
                draw(texts.get(column), column, x, top, tags.get(column), pen);
                x += widths[column] + gutter;
            }
            double y = top + units * stick.leading().half();
            pen.line(pen.left(), y, x - gutter, y, rule);
        });
    }

    private void draw(SetText text, int column, double x, double top, TagSlot tag, Pen pen) {
        // a cell without words is a cell all the same: its row must not be shorter than the others
        pen.tag(tag);
        for (int i = 0; i < text.count(); i++) {
            double shift = right[column] ? widths[column] - text.width(i) : 0;
            double baseline = stick.leading().baseline(top, 2 * (i + 1));
            text.draw(pen, i, x + shift, baseline, Mark.Ink.BLACK, tag);
        }
    }
}
