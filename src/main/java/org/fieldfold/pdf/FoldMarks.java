package org.fieldfold.pdf;

import java.util.Optional;
import org.fieldfold.fold.CutLine;
import org.fieldfold.fold.FoldLine;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.Mark;

/**
 * Shows where a side is folded and cut: unbroken marks for valleys, broken ones for mountains, long dashes
 * for cuts.
 */
record FoldMarks(PanelWriter writer, Bands bands, double sheetHeight, SheetWords words) {
    /** From a mark to its number. */
    private static final double BESIDE = 2;
    /** From here inwards, which a printer without a white edge shows too. */
    private static final double OUTSIDE = 4;
    /**
     * Length of a mark where folds meet inside the sheet; less than the 3 mm that panels leave free there.
     */
    private static final double INSIDE = 6;
    private static final double ABOVE_CUT = 1.6;

    void fold(FoldLine fold) {
        if (!fold.valley()) {
            writer.dashes(1.2, 0.8);
        }
        end(fold.x1(), fold.y1(), fold.x2(), fold.y2());
        end(fold.x2(), fold.y2(), fold.x1(), fold.y1());
        if (!fold.valley()) {
            writer.dashes();
        }
    }

    /**
     * Says as the how manyth fold a line is made, once, where it reaches an edge of the sheet; the marks of
     * all folds must be there before. A line that is passed over is made with another of the same number.
     */
    void step(FoldLine fold) {
        boolean level = fold.y1() == fold.y2();
        if (!write(fold, fold.x1(), fold.y1(), level)) {
            write(fold, fold.x2(), fold.y2(), level);
        }
    }

    private boolean write(FoldLine fold, double x, double y, boolean level) {
        return bands.at(x, y, level).filter(band -> {
            double at = band.level() ? x : sheetHeight - y;
            return band.writeBeside(words.step(fold), at, BESIDE)
                    || band.writeBeside(Integer.toString(fold.step()), at, BESIDE);
        }).isPresent();
    }

    /** Drawn from the inside out, so that a broken mark begins with a dash that every printer shows. */
    private void end(double x, double y, double towardsX, double towardsY) {
        double length = StrictMath.hypot(towardsX - x, towardsY - y);
        double dx = (towardsX - x) / length;
        double dy = (towardsY - y) / length;
        Optional<Band> band = bands.at(x, y, dx != 0);
        double from = band.isPresent() ? Band.INNER : INSIDE;
        double to = band.isPresent() ? OUTSIDE : 0;
        line(x + dx * from, y + dy * from, x + dx * to, y + dy * to);
        band.ifPresent(edge -> edge.takeFold(edge.level() ? x : sheetHeight - y));
    }

    /** A cut is shown whole: it runs between panels, where nothing else is printed. */
    void cut(CutLine cut) {
        writer.dashes(5, 2);
        line(cut.x1(), cut.y1(), cut.x2(), cut.y2());
        writer.dashes();
        boolean level = cut.y1() == cut.y2();
        double along = level ? sheetHeight - cut.y1() : cut.x1();
        bands.at(cut.x1(), cut.y1(), level).ifPresent(band -> band.takeFold(along));
        bands.at(cut.x2(), cut.y2(), level).ifPresent(band -> band.takeFold(along));
        if (level) {
            double x = Math.min(cut.x1(), cut.x2()) + Band.INNER;
            writer.draw(new Mark.Words(x, cut.y1() - ABOVE_CUT, Face.REGULAR, Band.TYPE, Mark.Ink.BLACK,
                    words.cut(), Optional.empty()));
        } else {
            writer.rising(cut.x1() - ABOVE_CUT, Math.max(cut.y1(), cut.y2()) - Band.INNER, Band.TYPE,
                    words.cut());
        }
    }

    private void line(double x1, double y1, double x2, double y2) {
        writer.draw(new Mark.Stroke(x1, y1, x2, y2, Band.HAIRLINE, Mark.Ink.BLACK));
    }
}
