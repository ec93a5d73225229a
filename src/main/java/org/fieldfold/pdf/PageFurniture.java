package org.fieldfold.pdf;

import java.util.Optional;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Side;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.Mark;

/**
 * What stands around pages in large type. There is nothing to fold, and no small print: only a bar to measure
 * on the first page, so that true-size bars can be trusted, with its words above it as large as all else.
 */
final class PageFurniture {
    /** From the edge of the sheet up to the words above the bar. */
    private static final double ABOVE = Band.INNER + 6;

    /** The smallest that large print is set in. */
    private static final double TYPE = 14;

    private PageFurniture() {}

    static void draw(Sheet sheet, SheetPage page) {
        if (page.sheet() > 0 || page.side() != Side.FRONT) {
            return;
        }
        Imposition imposition = sheet.job().imposition();
        PanelWriter writer = PanelWriter.begin(sheet, page,
                PanelFrame.page(imposition.sheetWidth(), imposition.sheetHeight()));
        Bands bands = new Bands(imposition.sheetWidth(), imposition.sheetHeight(), sheet.type().metrics());
        double left = imposition.slot(1).live().left();
        Scales.bar(bands.bottom(), left);
        bands.draw(writer);
        writer.draw(new Mark.Words(left, imposition.sheetHeight() - ABOVE, Face.REGULAR,
                TYPE, Mark.Ink.BLACK, sheet.job().words().bar(), Optional.empty()));
        writer.end();
    }
}
