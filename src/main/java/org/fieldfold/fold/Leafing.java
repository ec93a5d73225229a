package org.fieldfold.fold;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Reads a folded piece as a book: all panels lie on one another, held at the spine, and are read layer by
 * layer from the cover. What is shut in by a fold that is neither the spine nor trimmed off cannot be
 * reached.
 */
final class Leafing {
    private final FoldedSheet sheet;
    private final List<PlacedPanel> layers;
    private final List<LayerOrder.Bight> bights;
    private final Heading spine;

    private Leafing(FoldedSheet sheet) {
        this.sheet = sheet;
        this.layers = sheet.pile().layers();
        this.bights = LayerOrder.bights(layers, sheet.creases());
        PlacedPanel first = layers.get(0);
        for (PlacedPanel panel : layers) {
            if (panel.left() != first.left() || panel.right() != first.right() || panel.top() != first.top()
                    || panel.bottom() != first.bottom()) {
                throw new FoldException("what is leafed through must be folded to one pile of equal panels, "
                        + "but " + panel.cell() + " lies beside " + first.cell());
            }
        }
        this.spine = spineOf();
    }

    static List<ReadFace> read(FoldedSheet sheet) {
        return new Leafing(sheet).read();
    }

    private List<ReadFace> read() {
        View view = new View(sheet.scheme().head().heading(), coverIsAbove());
        requireHeld();
        List<ReadFace> order = new ArrayList<>();
        int n = layers.size();
        for (int k = 0; k < n; k++) {
            PlacedPanel panel = layers.get(view.fromAbove() ? n - 1 - k : k);
            order.add(new ReadFace(view.faceOf(panel), view.upOn(panel), PanelRole.INNER));
            order.add(new ReadFace(view.turnedOver().faceOf(panel), view.upOn(panel), PanelRole.INNER));
        }
        List<ReadFace> printed = Opening.withRoles(order, sheet, false);
        requireReached(printed);
        return printed;
    }

    private Heading spineOf() {
        int top = layers.size() - 1;
        for (LayerOrder.Bight bight : bights) {
            if (bight.low() == 0 && bight.high() == top) {
                return edgeOf(bight);
            }
        }
        if (sheet.made().isEmpty()) {
            throw new FoldException("no fold holds the first and the last leaf together: there is no spine");
        }
        List<Pile.Made> last = sheet.made().get(sheet.made().size() - 1);
        Pile.Made made = last.get(last.size() - 1);
        return edge(made.axis(), made.at() == layers.get(0).low(made.axis()));
    }

    private boolean coverIsAbove() {
        boolean gathered = sheet.scheme().steps().stream().anyMatch(FoldStep.Gather.class::isInstance);
        if (!gathered) {
            return Opening.lastFoldWentOver(sheet);
        }
        return spine != sheet.scheme().head().heading().clockwise(1);
    }

    private static Heading edgeOf(LayerOrder.Bight bight) {
        return edge(bight.axis(), bight.opensToHigh());
    }

    private static Heading edge(Axis axis, boolean low) {
        return axis == Axis.UPRIGHT ? low ? Heading.LEFT : Heading.RIGHT : low ? Heading.UP : Heading.DOWN;
    }

    private boolean trimmed(LayerOrder.Bight bight) {
        return sheet.scheme().trims().stream().anyMatch(edge -> edge.heading() == edgeOf(bight));
    }

    private void requireReached(List<ReadFace> printed) {
        Set<Face> faces = new HashSet<>();
        printed.forEach(face -> faces.add(face.face()));
        for (int k = 0; k + 1 < layers.size(); k++) {
            PlacedPanel low = layers.get(k);
            PlacedPanel high = layers.get(k + 1);
            boolean wanted = faces.contains(new Face(low.cell(), low.faceUp()))
                    || faces.contains(new Face(high.cell(), !high.faceUp()));
            for (LayerOrder.Bight bight : bights) {
                if (wanted && bight.low() <= k && k < bight.high() && edgeOf(bight) != spine
                        && !trimmed(bight)) {
                    throw new FoldException(low.cell() + " and " + high.cell() + " can't be reached: the "
                            + "fold at line " + bight.joint().line()
                            + " shuts them in; trim that edge or fold otherwise");
                }
            }
        }
    }

    private void requireHeld() {
        Set<Integer> held = new HashSet<>();
        boolean grown = true;
        while (grown) {
            grown = false;
            for (LayerOrder.Bight bight : bights) {
                boolean holds = edgeOf(bight) == spine
                        || !trimmed(bight) && (held.contains(bight.low()) || held.contains(bight.high()));
                if (holds) {
                    grown |= held.add(bight.low()) | held.add(bight.high());
                }
            }
        }
        for (int k = 0; k < layers.size(); k++) {
            if (!held.contains(k)) {
                throw new FoldException(layers.get(k).cell() + " comes loose: no fold holds it at the spine");
            }
        }
    }
}
