package org.fieldfold.typeset;

/**
 * A stretch of one run in one face, with no place inside where a line may end.
 *
 * @param run position of the run that it came from
 * @param width in thousandths of the type size
 */
record Piece(Face face, int run, String text, double width) {
    boolean continues(Piece before) {
        return face == before.face && run == before.run;
    }

    /** With a space behind it that is read, not seen. */
    Piece spaced() {
        return text.endsWith(" ") ? this : new Piece(face, run, text + " ", width);
    }
}
