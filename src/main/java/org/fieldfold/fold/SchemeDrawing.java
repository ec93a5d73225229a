package org.fieldfold.fold;

import java.util.List;
import java.util.Locale;

/**
 * Both pages of a scheme in plain text. In each panel stand its reading number and an arrow to its upper
 * edge; valleys are dotted ({@code :} and {@code . .}), mountains dash-dotted ({@code !} and {@code -.-.}),
 * cuts {@code #}.
 */
final class SchemeDrawing {
    private static final int CELL = 7;
    private static final double TOLERANCE = 0.01;

    private final Imposition imposition;

    SchemeDrawing(Imposition imposition) {
        this.imposition = imposition;
    }

    String draw() {
        FoldScheme scheme = imposition.scheme();
        StringBuilder text = new StringBuilder();
        text.append(String.format(Locale.ROOT, "%s on %s, %.1f x %.1f mm\n", scheme.id(),
                imposition.paper().id(), Lengths.millimetres(imposition.sheetWidth()),
                Lengths.millimetres(imposition.sheetHeight())));
        text.append(String.format(Locale.ROOT, "folded %.1f x %.1f mm, %d layers\n",
                Lengths.millimetres(imposition.foldedWidth()), Lengths.millimetres(imposition.foldedHeight()),
                imposition.layers()));
        page(text, Side.FRONT, "front");
        if (scheme.oneSided()) {
            text.append("back: blank\n");
        } else {
            page(text, Side.BACK, "back, turned over the "
                    + imposition.flip().name().toLowerCase(Locale.ROOT) + " edge");
        }
        return text.toString();
    }

    private void page(StringBuilder text, Side side, String name) {
        List<PanelSlot> slots = imposition.on(side);
        double[] xs = slots.stream().mapToDouble(PanelSlot::x).distinct().sorted().toArray();
        double[] ys = slots.stream().mapToDouble(PanelSlot::y).distinct().sorted().toArray();
        text.append(name).append('\n');
        for (int row = 0; row < ys.length; row++) {
            ruleAbove(text, side, xs, ys[row], row == 0);
            for (int column = 0; column < xs.length; column++) {
                PanelSlot slot = slotAt(slots, xs[column], ys[row]);
                text.append(column == 0 ? '|' : upright(side, slot))
                        .append(String.format(Locale.ROOT, "  %2d %c ", slot.reading(),
                                "^>v<".charAt(slot.rotation() / 90)));
            }
            text.append("|\n");
        }
        ruleAbove(text, side, xs, imposition.sheetHeight(), true);
    }

    private void ruleAbove(StringBuilder text, Side side, double[] xs, double y, boolean edge) {
        for (double x : xs) {
            text.append('+').append(edge ? "-".repeat(CELL) : level(side, x, y));
        }
        text.append("+\n");
    }

    private char upright(Side side, PanelSlot slot) {
        double middle = slot.y() + slot.height() / 2;
        for (FoldLine fold : imposition.foldLines()) {
            if (fold.side() == side && near(fold.x1(), slot.x()) && near(fold.x2(), slot.x())
                    && fold.y1() < middle && middle < fold.y2()) {
                return fold.valley() ? ':' : '!';
            }
        }
        return '#';
    }

    private String level(Side side, double x, double y) {
        for (FoldLine fold : imposition.foldLines()) {
            if (fold.side() == side && near(fold.y1(), y) && near(fold.y2(), y)
                    && fold.x1() < x + 1 && x + 1 < fold.x2()) {
                return fold.valley() ? ". . . ." : "-.-.-.-";
            }
        }
        return "#".repeat(CELL);
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) < TOLERANCE;
    }

    private static PanelSlot slotAt(List<PanelSlot> slots, double x, double y) {
        return slots.stream().filter(slot -> near(slot.x(), x) && near(slot.y(), y)).findFirst()
                .orElseThrow(() -> new IllegalStateException("no panel at " + x + ", " + y));
    }
}
