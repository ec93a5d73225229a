package org.fieldfold.pdf;

import org.fieldfold.fold.FoldLine;
import org.fieldfold.typeset.Mark;

/** What surrounds the panels. */
final class Furniture {
    private Furniture() {}

    static void draw(Sheet sheet, SheetPage page) {
        PanelWriter writer = PanelWriter.begin(sheet, page, PanelFrame.page(sheet.job().imposition().sheetWidth(),
                sheet.job().imposition().sheetHeight()));
        for (FoldLine fold : sheet.job().imposition().foldLines()) {
            if (fold.side() == page.side()) {
                writer.draw(new Mark.Stroke(fold.x1(), fold.y1() + 12, fold.x1(), fold.y1() + 17.5, 0.25, Mark.Ink.BLACK));
            }
        }
        writer.end();
    }
}
