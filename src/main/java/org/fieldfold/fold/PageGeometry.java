package org.fieldfold.fold;

/**
 * From the sheet as laid to its two printed pages. The front page is the laid sheet itself, or, if the
 * cover's side lies down, what is seen after turning it like a leaf. The back page follows from the printer:
 * it turns the sheet about the flip edge, and what is then upright is the page.
 *
 * @param frontIsUpper whether the front is the face that lies up at the start
 * @param leafwise whether the printer turns the sheet about an upright axis
 */
record PageGeometry(double width, double height, boolean frontIsUpper, boolean leafwise) {

    /** A corner-to-corner box or line on a page. */
    record Box(double x1, double y1, double x2, double y2) {
        Box ordered() {
            return new Box(Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2));
        }
    }

    boolean showsUpper(Side side) {
        return (side == Side.FRONT) == frontIsUpper;
    }

    Side sideOf(Face face) {
        return face.upper() == frontIsUpper ? Side.FRONT : Side.BACK;
    }

    Box onPage(Side side, Box laid) {
        boolean leftRight = !frontIsUpper;
        boolean topBottom = false;
        if (side == Side.BACK) {
            leftRight ^= leafwise;
            topBottom = !leafwise;
        }
        return new Box(leftRight ? width - laid.x1 : laid.x1, topBottom ? height - laid.y1 : laid.y1,
                leftRight ? width - laid.x2 : laid.x2, topBottom ? height - laid.y2 : laid.y2).ordered();
    }

    Heading onPage(Side side, Heading laid) {
        Heading front = laid.mirrored(!frontIsUpper, false);
        return side == Side.FRONT ? front : front.mirrored(leafwise, !leafwise);
    }
}
