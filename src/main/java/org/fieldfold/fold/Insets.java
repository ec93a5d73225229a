package org.fieldfold.fold;

/** Distances in points from the edges of a panel inwards, in the panel's own upright frame. */
public record Insets(double top, double right, double bottom, double left) {
    public Insets {
        if (top < 0 || right < 0 || bottom < 0 || left < 0) {
            throw new IllegalArgumentException("insets must not be negative: "
                    + top + ", " + right + ", " + bottom + ", " + left);
        }
    }
}
