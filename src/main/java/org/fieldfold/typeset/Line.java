package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;

/**
 * One line, broken.
 *
 * @param pieces stretches of one face and run; the last ends with its space where a word follows on the next line
 * @param width without that last space, in thousandths of the type size
 */
record Line(List<Piece> pieces, double width) {
    Line {
        pieces = List.copyOf(pieces);
    }

    /** A line of whole words; {@code more} when another line follows. */
    static Line of(List<Word> words, boolean more) {
        List<Piece> joined = new ArrayList<>();
        double width = 0;
        for (int i = 0; i < words.size(); i++) {
            Word word = words.get(i);
            boolean last = i == words.size() - 1;
            word.pieces().forEach(piece -> append(joined, piece));
            width += word.width() + (last ? 0 : word.spaceWidth());
            if (!last) {
                word.space().ifPresent(space -> append(joined, space));
            } else if (more && word.space().isPresent() && !joined.isEmpty()) {
                joined.set(joined.size() - 1, joined.get(joined.size() - 1).spaced());
            }
        }
        return new Line(joined, width);
    }

    private static void append(List<Piece> joined, Piece piece) {
        int last = joined.size() - 1;
        // a space of a run of its own needs no mark of its own
        if (last >= 0 && (piece.continues(joined.get(last)) || piece.text().isBlank())) {
            joined.set(last, joined.get(last).join(piece));
        } else {
            joined.add(piece);
        }
    }

    String text() {
        StringBuilder text = new StringBuilder();
        pieces.forEach(piece -> text.append(piece.text()));
        return text.toString();
    }
}
