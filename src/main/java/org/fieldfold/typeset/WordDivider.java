package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Divides a word that is wider than its column, between any two characters, because nothing is ever cut off.
 */
final class WordDivider {
    private final TypeMetrics metrics;
    private final double room;
    private final List<Word> parts = new ArrayList<>();
    private final List<Piece> taken = new ArrayList<>();
    private double width;

    private WordDivider(TypeMetrics metrics, double room) {
        this.metrics = metrics;
        this.room = room;
    }

    /** @param room in thousandths of the type size */
    static List<Word> divide(Word word, TypeMetrics metrics, double room) {
        WordDivider divider = new WordDivider(metrics, room);
        word.pieces().forEach(divider::take);
        divider.parts.add(new Word(divider.taken, word.space(), word.penalty()));
        return divider.parts;
    }

    private void take(Piece piece) {
        String text = piece.text();
        int start = 0;
        for (int at = 0; at < text.length(); at = text.offsetByCodePoints(at, 1)) {
            double next = metrics.width(piece.face(), text.substring(at, text.offsetByCodePoints(at, 1)));
            if (width > 0 && width + next > room) {
                keep(piece, start, at);
                parts.add(new Word(taken, Optional.empty(), 0));
                taken.clear();
                width = 0;
                start = at;
            }
            width += next;
        }
        keep(piece, start, text.length());
    }

    private void keep(Piece piece, int start, int end) {
        if (end > start) {
            String text = piece.text().substring(start, end);
            taken.add(new Piece(piece.face(), piece.run(), text, metrics.width(piece.face(), text)));
        }
    }
}
