package org.fieldfold.fold;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;

/** Finds the orders in which the layers of a gathered sheet can lie, from the way each fold is bent. */
final class LayerSearch {
    /** More steps than this are not tried: a pocket piece never needs them, and no file may keep us busy. */
    private static final int MOST_STEPS = 200_000;

    private final List<PlacedPanel> panels;
    private final List<Crease> creases;
    private final List<Cell[]> below = new ArrayList<>();
    private final List<List<PlacedPanel>> found = new ArrayList<>();
    private int steps;

    private LayerSearch(Collection<PlacedPanel> panels, List<Crease> creases, Map<Cell, PlacedPanel> placed) {
        this.panels = List.copyOf(panels);
        this.creases = creases;
        for (Crease crease : creases) {
            Cell low = crease.joint().low();
            Cell high = crease.joint().high();
            boolean highAbove = crease.valley() == placed.get(low).faceUp();
            below.add(highAbove ? new Cell[] {low, high} : new Cell[] {high, low});
        }
    }

    /** The only order, lowest layer first; none or more than one is refused. */
    static List<PlacedPanel> only(Map<Cell, PlacedPanel> placed, List<Crease> creases) {
        LayerSearch search = new LayerSearch(placed.values(), creases, placed);
        search.extend(new ArrayList<>());
        if (search.found.isEmpty()) {
            throw new FoldException("the sheet cannot be gathered so: no order of the layers lets every fold "
                    + "close the way it is bent");
        }
        if (search.found.size() > 1) {
            throw new FoldException("the sheet can be gathered in more than one way: say of more lines which "
                    + "way they bend, or cut less");
        }
        return search.found.get(0);
    }

    private void extend(List<PlacedPanel> layers) {
        if (found.size() > 1) {
            return;
        }
        if (++steps > MOST_STEPS) {
            throw new FoldException("the sheet has too many ways to be gathered to be proved");
        }
        if (layers.size() == panels.size()) {
            if (LayerOrder.flaw(layers, creases).isEmpty()) {
                found.add(List.copyOf(layers));
            }
            return;
        }
        for (PlacedPanel panel : panels) {
            if (!layers.contains(panel) && lowerOnesLie(panel.cell(), layers)) {
                layers.add(panel);
                extend(layers);
                layers.remove(layers.size() - 1);
            }
        }
    }

    private boolean lowerOnesLie(Cell cell, List<PlacedPanel> layers) {
        return below.stream().filter(pair -> pair[1].equals(cell))
                .allMatch(pair -> layers.stream().anyMatch(panel -> panel.cell().equals(pair[0])));
    }
}
