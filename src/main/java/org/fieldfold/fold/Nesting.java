package org.fieldfold.fold;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * How deep each column or row is tucked in: how many folds, made at other lines than its own, close around
 * its edge. A panel whose free edge only meets another one, as the doors of a gate do, counts as half tucked
 * in. Folds at right angles can tuck two columns into each other in turn; both then count the same, as no
 * width could help either.
 */
final class Nesting {
    private final FoldedSheet sheet;
    private final List<PlacedPanel> layers;
    private final List<LayerOrder.Bight> bights;

    Nesting(FoldedSheet sheet) {
        this.sheet = sheet;
        this.layers = sheet.pile().layers();
        this.bights = LayerOrder.bights(layers, sheet.creases());
    }

    /** A panel whose edge lies in a fold around it. */
    record Tuck(LayerOrder.Bight bight, PlacedPanel panel) {
    }

    List<Tuck> tucks(Axis axis) {
        List<Tuck> tucks = new ArrayList<>();
        for (LayerOrder.Bight bight : bights) {
            for (int k = bight.low() + 1; bight.axis() == axis && k < bight.high(); k++) {
                PlacedPanel panel = layers.get(k);
                double edge = bight.opensToHigh() ? panel.low(axis) : panel.high(axis);
                boolean own = sheetLine(panel, axis, !bight.opensToHigh()) == bight.joint().line().index();
                if (edge == bight.at() && !own && panel.abreast(bight.panel(), axis)) {
                    tucks.add(new Tuck(bight, panel));
                }
            }
        }
        return tucks;
    }

    /** Depth of each column (for upright lines) or row; pages of a book are trimmed, not tucked. */
    double[] depths(Axis axis) {
        int count = sheet.scheme().lines(axis) + 1;
        double[] depths = new double[count];
        if (sheet.scheme().leafed()) {
            return depths;
        }
        List<Tuck> tucks = tucks(axis);
        for (int k = 0; k < count; k++) {
            Set<GridLine> around = new HashSet<>();
            for (Tuck tuck : tucks) {
                if (tuck.panel().cell().along(axis) == k) {
                    around.add(tuck.bight().joint().line());
                }
            }
            depths[k] = around.isEmpty() && meetsAnother(axis, k) ? 0.5 : around.size();
        }
        return depths;
    }

    private boolean meetsAnother(Axis axis, int k) {
        for (PlacedPanel a : layers) {
            for (PlacedPanel b : layers) {
                boolean concerned = a.cell().along(axis) == k || b.cell().along(axis) == k;
                if (concerned && a.high(axis) == b.low(axis) && a.abreast(b, axis) && free(a, axis, true)
                        && free(b, axis, false) && sheetLine(a, axis, true) != sheetLine(b, axis, false)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean free(PlacedPanel panel, Axis axis, boolean highEdge) {
        int line = sheetLine(panel, axis, highEdge);
        return sheet.joints().stream().noneMatch(joint -> joint.joins(panel.cell())
                && joint.line().axis() == axis && joint.line().index() == line);
    }

    /** Which line of the sheet an edge of a placed panel is: 0 or the last for the edges of the sheet. */
    private static int sheetLine(PlacedPanel panel, Axis axis, boolean highEdge) {
        return panel.cell().along(axis) + (highEdge != panel.mirrored(axis) ? 1 : 0);
    }
}
