package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;

/**
 * One line, broken.
 *
 * @param pieces stretches of one face and run; the last ends with its space where a word follows on the next
 *     line
 * @param width without that last space, in thousandths of the type size
 */
record Line(List<Piece> pieces, double width) {
    Line {
        pieces = List.copyOf(pieces);
    }

    /** A line of whole words; {@code more} when another line follows. */
    static Line of(List<Word> words, boolean more) {
        Joint joint = new Joint();
        double width = 0;
        for (int i = 0; i < words.size(); i++) {
            Word word = words.get(i);
            boolean last = i == words.size() - 1;
            for (Piece piece : word.pieces()) {
                joint.add(piece);
            }
            width += word.width() + (last ? 0 : word.spaceWidth());
            if (word.space().isPresent() && !last) {
                joint.add(word.space().get());
            } else if (word.space().isPresent() && more) {
                joint.text.append(' ');
            }
        }
        return new Line(joint.end(), width);
    }

    /** Joins pieces of one face and run. */
    private static final class Joint {
        private final List<Piece> joined = new ArrayList<>();
        private final StringBuilder text = new StringBuilder();
        private Piece first;
        private double width;

        void add(Piece piece) {
            // a space of a run of its own needs no mark of its own
            if (first == null || !piece.continues(first) && !piece.text().isBlank()) {
                end();
                first = piece;
            }
            text.append(piece.text());
            width += piece.width();
        }

        List<Piece> end() {
            if (first != null) {
                joined.add(new Piece(first.face(), first.run(), text.toString(), width));
            }
            text.setLength(0);
            width = 0;
            return joined;
        }
    }

    String text() {
        StringBuilder text = new StringBuilder();
        pieces.forEach(piece -> text.append(piece.text()));
        return text.toString();
    }
}
