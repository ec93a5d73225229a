package org.fieldfold.handbook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import org.fieldfold.manuscript.Block;

/** Writes drawings with their true-size bars, tiles, and look-alikes side by side. */
final class PictureMarkup {
    /** Below this length, in mm, a bar has no room for ticks at its ends. */
    private static final double TICKED = 1.5;

    /**
     * Beyond these lengths, in mm, a bar would not stay true on a narrow screen: the figure alone says it.
     */
    private static final double LONGEST = 80;
    private static final double LONGEST_BESIDE = 35;

    private final Form form;
    private final Markup out;
    private final BlockMarkup blocks;

    PictureMarkup(Form form, Markup out, BlockMarkup blocks) {
        this.form = form;
        this.out = out;
        this.blocks = blocks;
    }

    void plates(Block.Plates plates, String barNote) {
        out.open("div", "class", "plates");
        plates.plates().forEach(plate -> plate(plate, LONGEST));
        out.close();
        if (plates.plates().stream().anyMatch(plate -> plate.trueSize().isPresent())) {
            out.element("p", barNote, "class", "small");
        }
    }

    private void plate(Block.Plate plate, double longest) {
        out.open("figure");
        form.picture(out, plate.figure(), plate.alt());
        out.open("figcaption");
        plate.trueSize().filter(length -> length.to() <= longest).ifPresent(this::bar);
        out.open("span");
        blocks.text(plate.caption());
        out.close().close().close();
    }

    /** A bar as long as the animal: solid to its smallest length, open to its largest. */
    private void bar(Block.Plate.Length length) {
        double from = Math.max(0, Math.min(length.from(), length.to()));
        double to = Math.max(from, length.to());
        String end = number(to);
        String path = "M0 1.2h" + number(from) + "v.7H0z";
        if (to > from) {
            path += "M" + number(from) + " 1.45H" + end + "v.2H" + number(from) + "z";
        }
        if (to >= TICKED) {
            path += "M0 0h.25v3H0zM" + end + " 0h-.25v3H" + end + "z";
        }
        out.open("svg", "class", "size", "width", end + "mm", "viewBox", "0 0 " + end + " 3", "aria-hidden", "true")
                .empty("path", "d", path).close();
    }

    void diagrams(Block.Diagrams diagrams) {
        out.open("div", "class", "plates diagrams");
        diagrams.diagrams().forEach(this::diagram);
        out.close();
    }

    /** A frame, the way in it, and a dot for each stop. */
    private void diagram(Block.Diagram drawing) {
        out.open("figure").open("svg", "class", "diagram", "role", "img", "aria-label", drawing.alt(),
                "viewBox", "-1 -1 " + number(drawing.width() + 2) + " " + number(drawing.height() + 2));
        out.empty("rect", "width", number(drawing.width()), "height", number(drawing.height()));
        for (List<Block.Spot> line : drawing.lines()) {
            out.empty("polyline", "points", line.stream()
                    .map(spot -> number(spot.x()) + "," + number(spot.y())).collect(Collectors.joining(" ")));
        }
        drawing.dots().forEach(spot -> out.empty("circle", "cx", number(spot.x()), "cy", number(spot.y()),
                "r", "2"));
        out.close().open("figcaption").element("span", Together.kept(drawing.caption())).close().close();
    }

    private static String number(double length) {
        return BigDecimal.valueOf(length).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros()
                .toPlainString();
    }

    void tiles(Block.Tiles tiles) {
        if (tiles.tiles().isEmpty()) {
            return;
        }
        boolean drawn = tiles.tiles().stream().anyMatch(tile -> tile.figure().isPresent());
        out.open("ul", "class", drawn ? "tiles" : "tiles doors");
        for (Block.Tile tile : tiles.tiles()) {
            out.open("li");
            String href = form.href(tile.link()).orElse("");
            if (href.isEmpty()) {
                out.open("span", "class", "tile");
            } else {
                out.open("a", "class", "tile", "href", href);
            }
            tile.figure().ifPresent(figure -> form.ornament(out, figure));
            out.element("b", tile.name()).text(" ").open("small");
            blocks.runs(tile.beneath());
            out.close().close().close();
        }
        out.close();
    }

    void pair(Block.SideBySide pair) {
        out.open("div", "class", "pair");
        side(pair.one());
        side(pair.other());
        out.open("p", "class", "mark");
        blocks.runs(pair.mark());
        out.close().close();
    }

    private void side(Block.Side side) {
        out.open("div", "class", "side");
        out.element("p", side.label(), "class", "label");
        side.plate().ifPresent(plate -> plate(plate, LONGEST_BESIDE));
        String href = side.link().isEmpty() ? "" : form.href(side.link()).orElse("");
        out.open("p", "class", "name");
        if (href.isEmpty()) {
            out.element("b", side.name());
        } else {
            out.open("a", "href", href).element("b", side.name()).close();
        }
        out.close().close();
    }
}
