package org.fieldfold.fold;

/** The part of the piece, as it lies before the folder, that a fold moves. */
public enum Part {
    LEFT(Axis.UPRIGHT), RIGHT(Axis.UPRIGHT), TOP(Axis.LEVEL), BOTTOM(Axis.LEVEL);

    private final Axis axis;

    Part(Axis axis) {
        this.axis = axis;
    }

    /** The line about which this part can be moved. */
    Axis axis() {
        return axis;
    }

    /** Whether the part is the one with the smaller coordinates. */
    boolean low() {
        return this == LEFT || this == TOP;
    }
}
