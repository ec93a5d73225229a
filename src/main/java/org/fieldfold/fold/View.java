package org.fieldfold.fold;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The piece as its reader looks at it.
 *
 * @param head what is uppermost for the reader, in the plane in which the piece lies
 * @param fromAbove whether the reader looks at the folder's side of the pile
 */
record View(Heading head, boolean fromAbove) {
    View turnedOver() {
        return new View(head, !fromAbove);
    }

    /** The panels that nothing hides even in part, from the top left, line by line. */
    List<PlacedPanel> whollyVisible(Pile pile) {
        List<PlacedPanel> layers = pile.layers();
        int n = layers.size();
        return IntStream.range(0, n)
                .filter(k -> IntStream.range(fromAbove ? k + 1 : 0, fromAbove ? n : k)
                        .noneMatch(j -> layers.get(j).overlaps(layers.get(k))))
                .mapToObj(layers::get)
                .sorted(lineByLine())
                .toList();
    }

    Face faceOf(PlacedPanel panel) {
        return new Face(panel.cell(), panel.faceUp() == fromAbove);
    }

    /** Where the upper edge of what is read here points on the flat sheet. */
    Heading upOn(PlacedPanel panel) {
        return head.mirrored(panel.mirroredX(), panel.mirroredY());
    }

    Heading rightHand() {
        return head.clockwise(fromAbove ? 1 : 3);
    }

    private Comparator<PlacedPanel> lineByLine() {
        Comparator<PlacedPanel> fromTop = Comparator.comparingDouble(panel -> -farthest(panel, head));
        return fromTop.thenComparingDouble(panel -> farthest(panel, rightHand()));
    }

    private static double farthest(PlacedPanel panel, Heading way) {
        return Math.max(way.dx * panel.left(), way.dx * panel.right())
                + Math.max(way.dy * panel.top(), way.dy * panel.bottom());
    }
}
