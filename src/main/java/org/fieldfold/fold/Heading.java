package org.fieldfold.fold;

/** A direction on the sheet or on a page, in clockwise quarter turns from the top. */
enum Heading {
    UP(0, -1), RIGHT(1, 0), DOWN(0, 1), LEFT(-1, 0);

    final int dx;
    final int dy;

    Heading(int dx, int dy) {
        this.dx = dx;
        this.dy = dy;
    }

    Heading clockwise(int quarters) {
        return values()[Math.floorMod(ordinal() + quarters, 4)];
    }

    /** As seen in a mirror that exchanges left and right (first) or top and bottom (second). */
    Heading mirrored(boolean leftRight, boolean topBottom) {
        boolean sideways = this == LEFT || this == RIGHT;
        return sideways ? leftRight ? clockwise(2) : this : topBottom ? clockwise(2) : this;
    }

    int degrees() {
        return ordinal() * 90;
    }
}
