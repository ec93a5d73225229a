package org.fieldfold.pdf;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.fold.Lengths;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.typeset.TypeMetrics;

/** The bands along the four edges of one side. */
final class Bands {
    private final double width;
    private final double height;
    private final Map<Band.Edge, Band> byEdge = new EnumMap<>(Band.Edge.class);

    Bands(double width, double height, TypeMetrics metrics) {
        this.width = width;
        this.height = height;
        for (Band.Edge edge : Band.Edge.values()) {
            byEdge.put(edge, new Band(edge, width, height, metrics));
        }
    }

    /** The band that a line reaches at this end of it; none where the end is inside the sheet. */
    Optional<Band> at(double x, double y, boolean levelLine) {
        if (levelLine) {
            return x < 1 ? Optional.of(byEdge.get(Band.Edge.LEFT))
                    : x > width - 1 ? Optional.of(byEdge.get(Band.Edge.RIGHT)) : Optional.empty();
        }
        return y < 1 ? Optional.of(byEdge.get(Band.Edge.TOP))
                : y > height - 1 ? Optional.of(byEdge.get(Band.Edge.BOTTOM)) : Optional.empty();
    }

    Band bottom() {
        return byEdge.get(Band.Edge.BOTTOM);
    }

    /** Top first: the feet of panels are set down to the last point. */
    List<Band> all() {
        return List.copyOf(byEdge.values());
    }

    /** Those along which lines of type begin come last. */
    List<Band> longestFirst() {
        return byEdge.values().stream().sorted(Comparator.comparing(Band::isLight)
                .thenComparing(Comparator.comparingDouble(Band::longestRoom).reversed())).toList();
    }

    /** Notes the edge of the sheet along which the lines of a panel begin, if they do. */
    void keepLight(PanelSlot slot) {
        if (slot.live().left() > Lengths.EDGE - 0.01) {
            byEdge.get(switch (slot.rotation()) {
                case 0 -> Band.Edge.LEFT;
                case 90 -> Band.Edge.TOP;
                case 180 -> Band.Edge.RIGHT;
                default -> Band.Edge.BOTTOM;
            }).keepLight();
        }
    }

    /** Keeps free what a box on the page covers of the band that it lies in. */
    void take(PageBox box) {
        if (box.top() < Band.INNER + 1) {
            byEdge.get(Band.Edge.BOTTOM).take(box.left(), box.right());
        } else if (box.bottom() > height - Band.INNER - 1) {
            byEdge.get(Band.Edge.TOP).take(box.left(), box.right());
        } else if (box.right() < Band.INNER + 1) {
            byEdge.get(Band.Edge.LEFT).take(box.bottom(), box.top());
        } else {
            byEdge.get(Band.Edge.RIGHT).take(box.bottom(), box.top());
        }
    }

    void draw(PanelWriter writer) {
        byEdge.values().forEach(band -> band.draw(writer));
    }
}
