package org.fieldfold.pack;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fieldfold.fold.CutLine;
import org.fieldfold.fold.FoldLine;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.PanelRole;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.fold.Side;
import org.fieldfold.handbook.Markup;

/**
 * A printed page drawn small: what stands on its panels as it is seen from afar, their numbers in reading order, the
 * way each lies, folds broken (towards the reader) or dash-dotted (away). Or, to show folding, its panels alone with
 * the numbers of the marks, the cover in black.
 */
final class SheetSketch {
    /** Points around the page: room for the numbers of marks. */
    private static final double AROUND = 4;
    private static final double MARKS = 84;

    private final Markup out;
    private final Imposition sheet;
    private final Side side;

    private SheetSketch(Markup out, Imposition sheet, Side side) {
        this.out = out;
        this.sheet = sheet;
        this.side = side;
    }

    /** @param title what stands on the cover, for those who hear the page */
    static void write(Markup out, Imposition sheet, Side side, String title, Miniature miniature, PackWords words) {
        new SheetSketch(out, sheet, side).whole(title, miniature, words);
    }

    /** The page that lies up when folding begins, its own words the right way up, with the numbers of its marks. */
    static void folding(Markup out, Imposition sheet, String name) {
        new SheetSketch(out, sheet, FoldingWords.up(sheet)).marks(name);
    }

    private void whole(String title, Miniature miniature, PackWords words) {
        List<PanelSlot> slots = sheet.on(side);
        open(words.say(side == Side.FRONT ? "sketch.front" : "sketch.back", title, slots.size()), "sheet", AROUND);
        for (PanelSlot slot : slots) {
            Optional.ofNullable(miniature.panels().get(slot.reading())).ifPresent(panel ->
                    panel(slot, panel, miniature.ink()));
        }
        lines();
        slots.forEach(slot -> number(slot, "number"));
        out.close();
    }

    private void marks(String name) {
        open(name, "sheet marks", MARKS);
        for (PanelSlot slot : sheet.on(side)) {
            boolean cover = slot.role() == PanelRole.COVER;
            if (cover) {
                out.empty("rect", "class", "cover", "x", whole(slot.x()), "y", whole(slot.y()), "width",
                        whole(slot.width()), "height", whole(slot.height()));
            }
            number(slot, cover ? "on-cover" : "number");
        }
        lines();
        for (FoldLine fold : sheet.foldLines()) {
            if (fold.side() == side && fold.move() != FoldLine.Move.ALONG) {
                boolean upright = fold.x1() == fold.x2();
                double x = upright ? fold.x1() : -MARKS / 2;
                double y = upright ? -MARKS / 4 : fold.y1() + MARKS / 4;
                out.element("text", Integer.toString(fold.step()), "class", "mark", "x", whole(x), "y", whole(y),
                        "font-size", whole(MARKS * 0.8), "text-anchor", "middle");
            }
        }
        out.close();
    }

    private void open(String name, String kind, double around) {
        out.open("svg", "class", kind, "role", "img", "aria-label", name, "viewBox", whole(-around) + " "
                + whole(-around) + " " + whole(sheet.sheetWidth() + 2 * around) + " "
                + whole(sheet.sheetHeight() + 2 * around));
        out.empty("rect", "class", "paper", "width", whole(sheet.sheetWidth()), "height",
                whole(sheet.sheetHeight()));
    }

    /** What stands on a panel, turned as it lies on the page. */
    private void panel(PanelSlot slot, Miniature.Panel panel, String ink) {
        out.open("g", "transform", "translate(" + whole(slot.x() + slot.width() / 2) + " "
                + whole(slot.y() + slot.height() / 2) + ") rotate(" + slot.rotation() + ") translate("
                + whole(-slot.uprightWidth() / 2) + " " + whole(-slot.uprightHeight() / 2) + ") scale("
                + whole(Miniature.UNIT) + ")");
        path("solid", panel.black(), "#000000");
        path("solid", panel.inked(), ink);
        path("type", panel.lines(), "#000000");
        path("type titles", panel.titles(), ink);
        out.close();
    }

    private void path(String kind, String data, String ink) {
        if (!data.isEmpty()) {
            out.empty("path", "class", kind, "color", ink, "d", data);
        }
    }

    private void lines() {
        for (FoldLine fold : sheet.foldLines()) {
            if (fold.side() == side) {
                line(fold.valley() ? "valley" : "mountain", fold.x1(), fold.y1(), fold.x2(), fold.y2());
            }
        }
        for (CutLine cut : sheet.cuts()) {
            if (cut.side() == side) {
                line("cut", cut.x1(), cut.y1(), cut.x2(), cut.y2());
            }
        }
    }

    private void line(String kind, double x1, double y1, double x2, double y2) {
        out.empty("line", "class", kind, "x1", whole(x1), "y1", whole(y1), "x2", whole(x2), "y2", whole(y2));
    }

    private void number(PanelSlot slot, String kind) {
        double x = slot.x() + slot.width() / 2;
        double y = slot.y() + slot.height() / 2;
        double size = Math.min(slot.width(), slot.height()) * 0.5;
        out.open("g", "class", kind, "transform", "translate(" + whole(x) + " " + whole(y) + ") rotate("
                + slot.rotation() + ")");
        out.empty("rect", "class", "plate", "x", whole(-size * 0.35), "y", whole(-size * 0.45), "width",
                whole(size * 0.7), "height", whole(size * 0.9));
        out.element("text", Integer.toString(slot.reading()), "font-size", whole(size), "text-anchor", "middle",
                "dy", whole(size * 0.36)).close();
    }

    private static String whole(double points) {
        return String.format(Locale.ROOT, "%.0f", points);
    }
}
