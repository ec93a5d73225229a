package org.fieldfold.pdf;

import java.util.List;
import java.util.Optional;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldLine;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Side;
import org.fieldfold.typeset.Mark;

/**
 * What surrounds the panels of one side, for those who print and fold: marks for folds and cuts, crosses that
 * fall on each other when the sheet is held to the light, a bar to measure, rulers, and a few words. All of
 * it is outside the live areas.
 */
final class Furniture {
    private static final double CROSS = (Band.OUTER + Band.INNER) / 2;
    private static final double ARM = (Band.INNER - Band.OUTER) / 2;

    private final Imposition imposition;
    private final SheetWords words;
    private final Side side;
    private final PanelWriter writer;
    private final Bands bands;

    private Furniture(Sheet sheet, SheetPage page, PanelWriter writer) {
        this.imposition = sheet.job().imposition();
        this.words = sheet.job().words();
        this.side = page.side();
        this.writer = writer;
        this.bands = new Bands(imposition.sheetWidth(), imposition.sheetHeight(), sheet.type().metrics());
        imposition.on(side).forEach(bands::keepLight);
    }

    static void draw(Sheet sheet, SheetPage page) {
        Imposition imposition = sheet.job().imposition();
        boolean twoSided = !imposition.on(Side.BACK).isEmpty();
        Optional<TurnOver> turn = TurnOver.of(imposition, sheet.job().words().turnOver(),
                sheet.type().metrics()).filter(found -> found.slot().side() == page.side());
        PanelWriter writer = PanelWriter.begin(sheet, page,
                PanelFrame.page(imposition.sheetWidth(), imposition.sheetHeight()));
        Furniture furniture = new Furniture(sheet, page, writer);
        furniture.crosses();
        turn.ifPresent(found -> furniture.bands.take(found.box()));
        furniture.foldsAndCuts();
        if (page.side() == Side.FRONT) {
            furniture.bar();
        }
        furniture.label(twoSided);
        if (page.side() == Side.BACK || !twoSided) {
            furniture.rulers();
        }
        furniture.bands.draw(writer);
        writer.end();
        turn.ifPresent(found -> {
            PanelWriter onPanel = PanelWriter.begin(sheet, page, found.frame());
            onPanel.draw(found.mark());
            onPanel.end();
        });
    }

    /** Turning the sheet about either edge takes these two corners of one side to those of the other. */
    private void crosses() {
        double width = imposition.sheetWidth();
        double height = imposition.sheetHeight();
        boolean front = side == Side.FRONT;
        cross(CROSS, front ? CROSS : height - CROSS);
        cross(width - CROSS, front ? height - CROSS : CROSS);
        for (Band band : bands.all()) {
            band.take(0, Band.INNER);
            band.take(band.length() - Band.INNER, band.length());
        }
    }

    private void cross(double x, double y) {
        writer.draw(hairline(x - ARM, y, x + ARM, y));
        writer.draw(hairline(x, y - ARM, x, y + ARM));
    }

    private static Mark hairline(double x1, double y1, double x2, double y2) {
        return new Mark.Stroke(x1, y1, x2, y2, Band.HAIRLINE, Mark.Ink.BLACK);
    }

    private void foldsAndCuts() {
        FoldMarks marks = new FoldMarks(writer, bands, imposition.sheetHeight(), words);
        List<FoldLine> folds = imposition.foldLines().stream().filter(fold -> fold.side() == side).toList();
        folds.forEach(marks::fold);
        imposition.cuts().stream().filter(cut -> cut.side() == side).forEach(marks::cut);
        folds.forEach(marks::step);
    }

    private void bar() {
        for (boolean pastFolds : new boolean[] {false, true}) {
            for (Band band : bands.longestFirst()) {
                Optional<Double> from = band.room(Scales.BAR, 0, pastFolds);
                if (from.isPresent()
                        && band.room(band.width(words.bar()), from.get() + Scales.BAR, false).isPresent()) {
                    Scales.bar(band, from.get());
                    band.write(words.bar(), from.get() + Scales.BAR);
                    return;
                }
            }
        }
        throw new IllegalArgumentException("no edge of the sheet has room for the bar of 100 mm and \""
                + words.bar() + "\"; shorten the words");
    }

    private void label(boolean twoSided) {
        String turn = imposition.flip() == FlipEdge.SHORT ? words.shortEdge() : words.longEdge();
        place(!twoSided ? words.only() : side == Side.FRONT ? words.front() + "; " + turn : words.back());
        if (imposition.foldLines().stream().anyMatch(fold -> fold.side() == side)) {
            place(words.marks());
        }
    }

    private void place(String text) {
        for (Band band : bands.all()) {
            if (band.write(text, 0)) {
                return;
            }
        }
    }

    private void rulers() {
        List<Band> longest = bands.longestFirst();
        Scales.millimetres(longest.get(0));
        Scales.inches(longest.get(1));
    }
}
