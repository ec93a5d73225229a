package org.fieldfold.fold;

/**
 * A panel where it lies in the piece.
 *
 * @param mirroredX whether left and right are exchanged against the flat sheet
 * @param mirroredY whether top and bottom are
 */
record PlacedPanel(Cell cell, double left, double top, double right, double bottom,
        boolean mirroredX, boolean mirroredY) {

    /** Whether the face that lay up at the start is up now. */
    boolean faceUp() {
        return mirroredX == mirroredY;
    }

    double low(Axis axis) {
        return axis == Axis.UPRIGHT ? left : top;
    }

    double high(Axis axis) {
        return axis == Axis.UPRIGHT ? right : bottom;
    }

    boolean mirrored(Axis axis) {
        return axis == Axis.UPRIGHT ? mirroredX : mirroredY;
    }

    /** The panel after a turn about a line at this place. */
    PlacedPanel turned(Axis axis, double at) {
        return axis == Axis.UPRIGHT
                ? new PlacedPanel(cell, 2 * at - right, top, 2 * at - left, bottom, !mirroredX, mirroredY)
                : new PlacedPanel(cell, left, 2 * at - bottom, right, 2 * at - top, mirroredX, !mirroredY);
    }

    boolean overlaps(PlacedPanel other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    boolean covers(double x, double y) {
        return left < x && x < right && top < y && y < bottom;
    }

    /** Whether the two share some length of any line that runs this way. */
    boolean abreast(PlacedPanel other, Axis axis) {
        return axis == Axis.UPRIGHT ? top < other.bottom && other.top < bottom
                : left < other.right && other.left < right;
    }

    /** Where the edge now lies that faced this neighbour on the sheet. */
    double edgeTowards(Joint joint) {
        Axis axis = joint.line().axis();
        boolean highEdge = joint.low().equals(cell) != mirrored(axis);
        return highEdge ? high(axis) : low(axis);
    }
}
