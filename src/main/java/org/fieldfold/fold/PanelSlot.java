package org.fieldfold.fold;

/**
 * One panel face on its printed page.
 *
 * @param reading from 1, in the order in which a reader meets the panels while opening the piece
 * @param side the page: the first of the PDF is the front
 * @param x left edge of the trim box on that page as it comes out of the PDF, points from the left
 * @param y upper edge of the trim box, points from the top
 * @param width of the trim box on the page; the panel's own height where it is turned by 90 or 270
 * @param height of the trim box on the page
 * @param rotation clockwise degrees by which the panel's upright content is turned on the page: 0, 90, 180,
 *     270
 * @param live what to keep free inside the trim box, in the panel's own upright frame
 */
public record PanelSlot(int reading, Side side, double x, double y, double width, double height, int rotation,
        Insets live, PanelRole role) {
    public PanelSlot {
        if (reading < 1) {
            throw new IllegalArgumentException("reading must be at least 1: " + reading);
        }
        if (!(width > 0) || !(height > 0)) {
            throw new IllegalArgumentException("width and height must be positive: " + width + " x "
                    + height);
        }
        if (rotation != 0 && rotation != 90 && rotation != 180 && rotation != 270) {
            throw new IllegalArgumentException("rotation must be 0, 90, 180 or 270: " + rotation);
        }
    }

    /** Whether the panel lies on its side, so that its own width is the height of its box on the page. */
    public boolean lyingOnItsSide() {
        return rotation == 90 || rotation == 270;
    }

    /** Width of the panel as its reader holds it. */
    public double uprightWidth() {
        return lyingOnItsSide() ? height : width;
    }

    /** Height of the panel as its reader holds it. */
    public double uprightHeight() {
        return lyingOnItsSide() ? width : height;
    }

    /** Width of the live area as the reader holds the panel. */
    public double liveWidth() {
        return uprightWidth() - live.left() - live.right();
    }

    /** Height of the live area as the reader holds the panel. */
    public double liveHeight() {
        return uprightHeight() - live.top() - live.bottom();
    }
}
