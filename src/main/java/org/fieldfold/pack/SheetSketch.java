package org.fieldfold.pack;

import java.util.List;
import java.util.Locale;
import org.fieldfold.fold.CutLine;
import org.fieldfold.fold.FoldLine;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.PanelRole;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.fold.Side;
import org.fieldfold.handbook.Markup;

/**
 * A printed page drawn small: its panels with their numbers in reading order, the way each lies, the cover in
 * black, folds broken (towards the reader) or dash-dotted (away).
 */
final class SheetSketch {
    private SheetSketch() {
    }

    /** @param title what stands on the cover, for those who hear the page */
    static void write(Markup out, Imposition sheet, Side side, String title, PackWords words) {
        List<PanelSlot> slots = sheet.on(side);
        String name = words.say(side == Side.FRONT ? "sketch.front" : "sketch.back", title, slots.size());
        out.open("svg", "class", "sheet", "role", "img", "aria-label", name, "viewBox",
                "-4 -4 " + number(sheet.sheetWidth() + 8) + " " + number(sheet.sheetHeight() + 8));
        out.empty("rect", "class", "paper", "width", number(sheet.sheetWidth()), "height",
                number(sheet.sheetHeight()));
        for (PanelSlot slot : slots) {
            panel(out, slot);
        }
        for (FoldLine fold : sheet.foldLines()) {
            if (fold.side() == side) {
                line(out, fold.valley() ? "valley" : "mountain", fold.x1(), fold.y1(), fold.x2(), fold.y2());
            }
        }
        for (CutLine cut : sheet.cuts()) {
            if (cut.side() == side) {
                line(out, "cut", cut.x1(), cut.y1(), cut.x2(), cut.y2());
            }
        }
        out.close();
    }

    private static void panel(Markup out, PanelSlot slot) {
        boolean cover = slot.role() == PanelRole.COVER;
        if (cover) {
            out.empty("rect", "class", "cover", "x", number(slot.x()), "y", number(slot.y()), "width",
                    number(slot.width()), "height", number(slot.height()));
        }
        double x = slot.x() + slot.width() / 2;
        double y = slot.y() + slot.height() / 2;
        double size = Math.min(slot.width(), slot.height()) * 0.5;
        out.element("text", Integer.toString(slot.reading()), "class", cover ? "on-cover" : "number",
                "font-size", number(size), "text-anchor", "middle", "transform",
                "translate(" + number(x) + " " + number(y) + ") rotate(" + slot.rotation() + ")", "dy",
                number(size * 0.36));
    }

    private static void line(Markup out, String kind, double x1, double y1, double x2, double y2) {
        out.empty("line", "class", kind, "x1", number(x1), "y1", number(y1), "x2", number(x2), "y2",
                number(y2));
    }

    private static String number(double points) {
        return String.format(Locale.ROOT, "%.0f", points);
    }
}
