package org.fieldfold.typeset;

import java.util.List;
import java.util.Optional;

/**
 * What stays on one line: a word, or a number with its unit.
 *
 * @param space the space behind it, or empty where a line may end without one, as after a dash
 * @param penalty what it costs to end a line behind it; see {@link LineFit}
 */
record Word(List<Piece> pieces, Optional<Piece> space, double penalty) {
    Word {
        pieces = List.copyOf(pieces);
    }

    /** Without its space, in thousandths of the type size. */
    double width() {
        double sum = 0;
        for (Piece piece : pieces) {
            sum += piece.width();
        }
        return sum;
    }

    double spaceWidth() {
        return space.map(Piece::width).orElse(0.0);
    }
}
