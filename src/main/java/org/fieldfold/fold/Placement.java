package org.fieldfold.fold;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where panels of any widths and heights lie once given joints are folded: each folded joint lays a panel
 * back over its neighbour. It knows nothing of layers, and so is a second, independent way to the folded
 * outline.
 */
final class Placement {
    private static final double TOLERANCE = 1e-6;

    private Placement() {
    }

    /** Places all panels, whose sizes are those of the flat ones, about one that stays as it is. */
    static Map<Cell, PlacedPanel> byCreases(List<PlacedPanel> flat, PlacedPanel fixed, List<Joint> joints,
            List<Crease> creases) {
        Map<Cell, PlacedPanel> sizes = new LinkedHashMap<>();
        flat.forEach(panel -> sizes.put(panel.cell(), panel));
        Map<Cell, PlacedPanel> placed = new LinkedHashMap<>();
        Deque<PlacedPanel> next = new ArrayDeque<>(List.of(fixed));
        placed.put(fixed.cell(), fixed);
        while (!next.isEmpty()) {
            PlacedPanel from = next.remove();
            for (Joint joint : joints) {
                if (!joint.joins(from.cell())) {
                    continue;
                }
                boolean folded = creases.stream().anyMatch(crease -> crease.joint().equals(joint));
                PlacedPanel to = beside(from, sizes.get(joint.other(from.cell())), joint, folded);
                PlacedPanel before = placed.putIfAbsent(to.cell(), to);
                if (before == null) {
                    next.add(to);
                } else if (!same(before, to)) {
                    throw new FoldException("the folds do not close around " + to.cell()
                            + ": the paper would have to tear at line " + joint.line());
                }
            }
        }
        return placed;
    }

    private static PlacedPanel beside(PlacedPanel from, PlacedPanel size, Joint joint, boolean folded) {
        Axis axis = joint.line().axis();
        double edge = from.edgeTowards(joint);
        boolean edgeIsHigh = edge == from.high(axis);
        double extent = size.high(axis) - size.low(axis);
        double low = edgeIsHigh != folded ? edge : edge - extent;
        boolean mirrored = from.mirrored(axis) != folded;
        return axis == Axis.UPRIGHT
                ? new PlacedPanel(size.cell(), low, from.top(), low + extent, from.bottom(),
                        mirrored, from.mirroredY())
                : new PlacedPanel(size.cell(), from.left(), low, from.right(), low + extent,
                        from.mirroredX(), mirrored);
    }

    private static boolean same(PlacedPanel a, PlacedPanel b) {
        return a.mirroredX() == b.mirroredX() && a.mirroredY() == b.mirroredY()
                && Math.abs(a.left() - b.left()) < TOLERANCE && Math.abs(a.top() - b.top()) < TOLERANCE
                && Math.abs(a.right() - b.right()) < TOLERANCE
                && Math.abs(a.bottom() - b.bottom()) < TOLERANCE;
    }
}
