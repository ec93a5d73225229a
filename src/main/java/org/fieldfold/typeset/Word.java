package org.fieldfold.typeset;

import java.util.List;
import java.util.Optional;

/**
 * What stays on one line: a word, or a number with its unit.
 *
 * @param space the space behind it, or empty where a line may end without one, as after a dash
 * @param penalty what it costs to end a line behind it; see {@link LineFit}
 * @param width without its space, in thousandths of the type size
 */
record Word(List<Piece> pieces, Optional<Piece> space, double penalty, double width) {
    Word {
        pieces = List.copyOf(pieces);
    }

    Word(List<Piece> pieces, Optional<Piece> space, double penalty) {
        this(pieces, space, penalty, pieces.stream().mapToDouble(Piece::width).sum());
    }

    double spaceWidth() {
        return space.map(Piece::width).orElse(0.0);
    }
}
