package org.fieldfold.pdf;

import org.fieldfold.typeset.Mark;

/** An ink by its parts, each from 0 to 255. */
record InkColour(int red, int green, int blue) {

    static InkColour of(Mark.Ink ink) {
        if (!ink.rgb().matches("#[0-9a-fA-F]{6}")) {
            throw new IllegalArgumentException("expected an ink as #rrggbb, found '" + ink.rgb() + "'");
        }
        int rgb = Integer.parseInt(ink.rgb().substring(1), 16);
        return new InkColour(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff);
    }

    /** Sets the ink; grey is said as grey, so that a colour printer takes black toner for black type. */
    void set(Operators out, boolean fill) {
        if (red == green && green == blue) {
            out.op(fill ? "g" : "G", red / 255.0);
        } else {
            out.op(fill ? "rg" : "RG", red / 255.0, green / 255.0, blue / 255.0);
        }
    }
}
