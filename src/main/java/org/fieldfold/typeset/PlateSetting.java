package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.Figures;
import org.fieldfold.prose.Run;

/**
 * Sets drawings side by side, each above its true-size bar and its caption; as high as the panel has room
 * for.
 */
final class PlateSetting {
    private static final double MM = 72 / 25.4;
    static final double LOWEST = 16 * MM;
    static final double HIGHEST = 34 * MM;
    /** Drawings lower than this do not stand side by side. */
    private static final double SIDE_BY_SIDE = 10 * MM;
    private static final double BAR = 0.9;
    private static final int MOST_IN_A_ROW = 4;

    private final Block.Plates block;
    private final Stick stick;
    private final List<PlateRow> rows;

    private PlateSetting(Block.Plates block, Stick stick) {
        this.block = block;
        this.stick = stick;
        this.rows = rows(Math.max(1, (block.plates().size() + MOST_IN_A_ROW - 1) / MOST_IN_A_ROW));
    }

    static Choice set(Block.Plates block, Stick stick) {
        if (block.plates().isEmpty()) {
            return Choice.only(block.origin(), List.of(Strip.opening(0, 0, false, (pen, top) -> {})));
        }
        return new PlateSetting(block, stick).choice();
    }

    private Choice choice() {
        Leading leading = stick.leading();
        double widest = rows.stream().mapToDouble(PlateRow::tallest).max().orElse(LOWEST);
        double larger = stick.enlargement();
        int most = leading.units(Math.min(HIGHEST * larger, widest));
        int least = Math.min(most, leading.units(Math.min(LOWEST * larger, widest)));
        List<Choice.Way> ways = new ArrayList<>();
        for (int units = most; units >= least; units--) {
            List<TagSlot> figures = block.plates().stream().map(plate -> TagSlot.figure(plate.alt()))
                    .toList();
            List<Strip> strips = new ArrayList<>();
            int first = 0;
            for (PlateRow row : rows) {
                strips.add(strip(row, units, figures.subList(first, first + row.plates().size()),
                        strips.isEmpty()));
                first += row.plates().size();
            }
            ways.add(new Choice.Way((most - units) * Cost.PLATE, false, strips));
        }
        return new Choice(block.origin(), ways);
    }

    private List<PlateRow> rows(int count) {
        int plates = block.plates().size();
        List<PlateRow> split = new ArrayList<>();
        for (int row = 0; row < count; row++) {
            split.add(row(block.plates().subList(row * plates / count, (row + 1) * plates / count)));
        }
        return count < plates && !split.stream().allMatch(row -> row.fits(SIDE_BY_SIDE)) ? rows(count + 1)
                : split;
    }

    private PlateRow row(List<Block.Plate> plates) {
        double[] aspects = new double[plates.size()];
        double[] least = new double[plates.size()];
        for (int i = 0; i < plates.size(); i++) {
            Block.Plate plate = plates.get(i);
            aspects[i] = Math.min(12, Math.max(1 / 12.0, stick.shapes().aspect(plate.figure())));
            double words = stick.widestWord(List.of(Run.plain(caption(plate))), Voice.TEXT,
                    stick.leading().small(), block.origin());
            least[i] = Math.min(stick.measure(), Math.max(words, bar(plate)));
        }
        return PlateRow.of(plates, aspects, least, stick.measure(), 1.2 * stick.size());
    }

    /**
     * Length of the true-size bar in points; 0 where there is none, or where it is longer than the panel is
     * wide.
     */
    private double bar(Block.Plate plate) {
        return bar(plate, stick.measure());
    }

    private static double bar(Block.Plate plate, double room) {
        double length = plate.trueSize().map(size -> Math.max(size.from(), size.to()) * MM).orElse(0.0);
        return length <= room ? length : 0;
    }

    /** The caption with the size in figures, unless the author gave it. */
    static String caption(Block.Plate plate) {
        if (plate.trueSize().isEmpty() || plate.caption().matches(".*[0-9][\\s\u00a0]*(mm|in|pulg)\\b.*")) {
            return plate.caption();
        }
        double from = plate.trueSize().get().from();
        double to = plate.trueSize().get().to();
        String size = Figures.range(from, to) + "\u00a0mm";
        return plate.caption().isBlank() ? size : plate.caption() + ", " + size;
    }

    private Strip strip(PlateRow row, int units, List<TagSlot> figures, boolean first) {
        Leading leading = stick.leading();
        List<PlateRow.Placed> placed = row.place(units * leading.half());
        List<SetText> captions = placed.stream().map(one ->
                stick.text(List.of(Run.plain(caption(one.plate()))),
                Voice.TEXT, leading.small(), one.column(), block.origin())).toList();
        int lines = captions.stream().mapToInt(SetText::count).max().orElse(0);
        int bars = placed.stream().anyMatch(one -> bar(one.plate()) > 0) ? 1 : 0;
        Strip.Ink draw = (pen, top) -> {
            for (int i = 0; i < placed.size(); i++) {
                PlateRow.Placed one = placed.get(i);
                double foot = top + units * leading.half();
                double y = top + (units * leading.half() - one.height()) / 2;
                pen.drawing(one.plate().figure(), pen.left() + one.centre() - one.width() / 2, y, one.width(),
                        one.height(), figures.get(i));
                bar(one, pen, foot + 0.62 * leading.half());
                caption(captions.get(i), one, figures.get(i).in(Tag.Role.CAPTION), pen, foot
                        + bars * leading.half());
            }
        };
        return first ? Strip.opening(1, units + bars + 2 * lines, false, draw)
                : new Strip(1, false, Cost.DIVIDED + Cost.APART + Cost.INSIDE, units + bars + 2 * lines,
                false, draw);
    }

    private void caption(SetText text, PlateRow.Placed one, TagSlot tag, Pen pen, double top) {
        for (int i = 0; i < text.count(); i++) {
            double x = pen.left() + one.centre() - text.width(i) / 2;
            text.draw(pen, i, x, stick.leading().baseline(top, 2 * (i + 1)), Mark.Ink.BLACK, tag);
        }
    }

    private void bar(PlateRow.Placed one, Pen pen, double y) {
        bar(one.plate(), stick.measure(), stick, pen, pen.left() + one.centre(), y);
    }

    /** A bar as long as the animal at its largest, with a tick at its smallest; none if it has no room. */
    static void bar(Block.Plate plate, double room, Stick stick, Pen pen, double centre, double y) {
        double length = bar(plate, room);
        if (length <= 0) {
            return;
        }
        double x = centre - length / 2;
        double tick = 0.38 * stick.size();
        pen.line(x, y, x + length, y, BAR);
        pen.line(x + BAR / 2, y - tick, x + BAR / 2, y, BAR);
        pen.line(x + length - BAR / 2, y - tick, x + length - BAR / 2, y, BAR);
        double smallest = plate.trueSize().map(size -> Math.min(size.from(), size.to()) * MM).orElse(length);
        if (length - smallest > 2 * BAR && smallest > 2 * BAR) {
            pen.line(x + smallest, y - 0.7 * tick, x + smallest, y, BAR * 0.7);
        }
    }
}
