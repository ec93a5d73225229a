package org.fieldfold.typeset;

/**
 * A part of a set block that is never divided between panels.
 *
 * @param gap half lines left white above it, unless it stands first on its panel
 * @param opens whether it begins a group: the white above it may grow where there is room
 * @param breaking what it costs to begin a panel with it; see {@link Cost}
 * @param units its height in half lines
 * @param keep whether the next strip stands on the same panel
 * @param head what is set again above it where its block goes on with it on another panel
 */
record Strip(int gap, boolean opens, long breaking, int units, boolean keep, Ink draw, Head head) {
    private static final Head NONE = new Head(0, (pen, top) -> {});

    Strip(int gap, boolean opens, long breaking, int units, boolean keep, Ink draw) {
        this(gap, opens, breaking, units, keep, draw, NONE);
    }

    /** Said again for the eye alone: read aloud, its block has not been interrupted. */
    record Head(int units, Ink draw) {}

    /** Draws a strip whose upper edge is {@code top} points down the panel. */
    interface Ink {
        void draw(Pen pen, double top);
    }

    /** The first strip of a block. */
    static Strip opening(int gap, int units, boolean keep, Ink draw) {
        return new Strip(gap, true, Cost.DIVIDED + Cost.APART, units, keep, draw);
    }

    /** A strip that goes on with its block. */
    static Strip following(int units, Ink draw) {
        return new Strip(0, false, Cost.DIVIDED + Cost.APART + Cost.INSIDE, units, false, draw);
    }

    Strip kept() {
        return new Strip(gap, opens, breaking, units, true, draw, head);
    }

    Strip under(Head again) {
        return new Strip(gap, opens, breaking, units, keep, draw, again);
    }

    /** The first strip of a section: a panel may begin here at no cost. */
    Strip leading(int white) {
        return new Strip(white, opens, 0, units, keep, draw);
    }
}
