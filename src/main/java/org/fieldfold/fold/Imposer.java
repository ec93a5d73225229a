package org.fieldfold.fold;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Builds an {@link Imposition}: folds, reads, sizes the panels, and puts them on the pages. */
final class Imposer {
    private final FoldScheme scheme;
    private final Paper paper;
    private final FlipEdge flip;
    private final FoldedSheet sheet;
    private final double width;
    private final double height;
    private final double[] xs;
    private final double[] ys;

    Imposer(FoldScheme scheme, Paper paper, FlipEdge flip) {
        this.scheme = scheme;
        this.paper = paper;
        this.flip = flip;
        this.sheet = FoldedSheet.of(scheme);
        this.width = scheme.landscape() ? paper.height() : paper.width();
        this.height = scheme.landscape() ? paper.width() : paper.height();
        Nesting nesting = new Nesting(sheet);
        this.xs = edges(PanelSizes.divide(width, scheme.columns(), nesting.depths(Axis.UPRIGHT), paper));
        this.ys = edges(PanelSizes.divide(height, scheme.rows(), nesting.depths(Axis.LEVEL), paper));
    }

    Imposition impose() {
        List<ReadFace> reading = scheme.leafed() ? Leafing.read(sheet) : Opening.read(sheet);
        PageGeometry pages = new PageGeometry(width, height, reading.get(0).face().upper(),
                flip.turnsLikeALeaf(width, height));
        List<PanelSlot> slots = new ArrayList<>();
        for (ReadFace face : reading) {
            slots.add(slot(slots.size() + 1, face, pages));
        }
        Map<Cell, PlacedPanel> folded = folded();
        double across = span(folded, Axis.UPRIGHT);
        double down = span(folded, Axis.LEVEL);
        boolean sideways = scheme.head().heading().dx != 0;
        Lines lines = new Lines(sheet, pages, xs, ys);
        return new Imposition(paper, scheme, flip, width, height, slots, lines.folds(), lines.cuts(),
                sideways ? down : across, sideways ? across : down, sheet.layers());
    }

    private PanelSlot slot(int reading, ReadFace read, PageGeometry pages) {
        Cell cell = read.face().cell();
        Side side = pages.sideOf(read.face());
        PageGeometry.Box box = pages.onPage(side, new PageGeometry.Box(xs[cell.column()], ys[cell.row()],
                xs[cell.column() + 1], ys[cell.row() + 1]));
        Heading up = pages.onPage(side, read.up());
        double[] margins = new double[4];
        for (Heading way : Heading.values()) {
            // the page's heading, counted from the panel's own upper edge
            int own = Math.floorMod(pages.onPage(side, way).ordinal() - up.ordinal(), 4);
            margins[own] = atSheetEdge(cell, way) ? Lengths.EDGE : Lengths.FOLD;
        }
        PanelSlot slot = new PanelSlot(reading, side, box.x1(), box.y1(), box.x2() - box.x1(),
                box.y2() - box.y1(), up.degrees(), new Insets(margins[0], margins[1], margins[2], margins[3]),
                read.role());
        if (slot.liveWidth() <= 0 || slot.liveHeight() <= 0) {
            throw new FoldException(String.format(Locale.ROOT, "%s is %.1f by %.1f mm on %s paper: nothing "
                    + "is left inside its margins", cell, Lengths.millimetres(slot.uprightWidth()),
                    Lengths.millimetres(slot.uprightHeight()), paper.id()));
        }
        return slot;
    }

    private boolean atSheetEdge(Cell cell, Heading way) {
        return switch (way) {
            case UP -> cell.row() == 0;
            case DOWN -> cell.row() == scheme.rows().size() - 1;
            case LEFT -> cell.column() == 0;
            case RIGHT -> cell.column() == scheme.columns().size() - 1;
        };
    }

    /** The folded piece in real sizes. */
    Map<Cell, PlacedPanel> folded() {
        List<PlacedPanel> flat = new ArrayList<>();
        for (PlacedPanel panel : Pile.flat(scheme).layers()) {
            Cell cell = panel.cell();
            flat.add(new PlacedPanel(cell, xs[cell.column()], ys[cell.row()], xs[cell.column() + 1],
                    ys[cell.row() + 1], false, false));
        }
        return Placement.byCreases(flat, flat.get(0), sheet.joints(), sheet.creases());
    }

    private static double span(Map<Cell, PlacedPanel> panels, Axis axis) {
        double low = panels.values().stream().mapToDouble(panel -> panel.low(axis)).min().orElse(0);
        double high = panels.values().stream().mapToDouble(panel -> panel.high(axis)).max().orElse(0);
        return high - low;
    }

    private static double[] edges(double[] sizes) {
        double[] edges = new double[sizes.length + 1];
        for (int k = 0; k < sizes.length; k++) {
            edges[k + 1] = edges[k] + sizes[k];
        }
        return edges;
    }
}
