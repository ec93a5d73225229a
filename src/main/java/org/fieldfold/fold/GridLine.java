package org.fieldfold.fold;

/**
 * A line between panels: {@code x2} runs between the second and the third column, {@code y1} below the first
 * row.
 */
public record GridLine(Axis axis, int index) {
    public GridLine {
        if (index < 1) {
            throw new IllegalArgumentException("lines are counted from 1: " + index);
        }
    }

    @Override
    public String toString() {
        return (axis == Axis.UPRIGHT ? "x" : "y") + index;
    }
}
