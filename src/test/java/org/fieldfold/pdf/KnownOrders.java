package org.fieldfold.pdf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.fold.Side;

/**
 * In which order the panels of each shipped scheme are read, and which stand on their heads, worked out
 * without the code, from the folds one movement after the other (letter fold, accordion, French fold and
 * one-cut booklet are common practice, no source; the others follow from the rule that {@link Imposition}
 * states). Line by line on the front, and on the back as it is seen when the front is turned over like a
 * leaf; a minus stands before a panel that stands on its head there.
 */
final class KnownOrders {
    private static final Map<String, String> ORDERS = Map.ofEntries(
            Map.entry("accordion-3", "4 5 1 | 2 3 6"),
            Map.entry("accordion-4", "8 6 7 1 | 2 3 4 5"),
            Map.entry("accordion-5", "6 7 8 9 1 | 2 3 4 5 10"),
            Map.entry("accordion-6", "12 8 9 10 11 1 | 2 3 4 5 6 7"),
            Map.entry("booklet-8", "-5 -4 -3 -2 6 7 8 1"),
            Map.entry("double-gate", "3 8 1 2 | 4 5 6 7"),
            Map.entry("double-parallel", "2 3 8 1 | 4 5 6 7"),
            Map.entry("french", "-3 -2 8 1 | 4 5 6 7"),
            Map.entry("gate", "2 6 1 | 3 4 5"),
            Map.entry("half", "4 1 | 2 3"),
            Map.entry("letter", "2 6 1 | 3 4 5"),
            Map.entry("map", "-1 12 13 2 16 14 15 3 | 4 5 6 7 8 9 10 11"));

    private KnownOrders() {
    }

    /** The panels of one page, from the top left, line by line; negative for those head down. */
    static List<Integer> of(Imposition imposition, Side side) {
        String[] sides = ORDERS.get(imposition.scheme().id()).split(" \\| ");
        if (side.ordinal() >= sides.length) {
            return List.of();
        }
        List<Integer> panels = new ArrayList<>();
        for (String panel : sides[side.ordinal()].split(" ")) {
            panels.add(Integer.parseInt(panel));
        }
        boolean lying = imposition.sheetWidth() > imposition.sheetHeight();
        boolean leaf = lying == (imposition.flip() == FlipEdge.SHORT);
        if (side == Side.BACK && !leaf) {
            // turned over its foot or head, the back comes out head down
            Collections.reverse(panels);
            panels.replaceAll(panel -> -panel);
        }
        return panels;
    }

    /** The same, by the upper left corner of the panel's box on the page. */
    static int panelAt(Imposition imposition, PanelSlot slot) {
        return of(imposition, slot.side()).get(imposition.on(slot.side()).indexOf(slot));
    }
}
