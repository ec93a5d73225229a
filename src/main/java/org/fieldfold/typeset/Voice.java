package org.fieldfold.typeset;

import org.fieldfold.prose.Run;

/** The tone that a text is set in, and so the face that each of its runs takes. */
enum Voice {
    /** Body: upright, with bold lead-ins and italic names. */
    TEXT,
    /** Titles and headings: bold throughout, names in bold italic. */
    HEADING;

    Face face(Run.Style style) {
        boolean slanted = style == Run.Style.EMPHASIS || style == Run.Style.NAME;
        if (this == HEADING) {
            return slanted ? Face.BOLD_ITALIC : Face.BOLD;
        }
        return slanted ? Face.ITALIC : style == Run.Style.STRONG ? Face.BOLD : Face.REGULAR;
    }
}
