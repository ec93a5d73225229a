package org.fieldfold.typeset;

import java.util.List;
import java.util.Optional;
import org.fieldfold.prose.Run;

/**
 * A text broken into lines. Drawn line by line; its links and names get their tags as they are drawn.
 *
 * @param runs what it was made from
 * @param size in points
 */
record SetText(List<Run> runs, List<Line> lines, double size, Abbreviations abbreviations) {
    int count() {
        return lines.size();
    }

    /** Width of a line in points, without a space at its end. */
    double width(int line) {
        return lines.get(line).width() * size / 1000;
    }

    double width() {
        return java.util.stream.IntStream.range(0, count()).mapToDouble(this::width).max().orElse(0);
    }

    /** Draws a line as part of what is read. */
    void draw(Pen pen, int line, double x, double baseline, Mark.Ink ink, TagSlot tag) {
        draw(pen, line, x, baseline, ink, tag, false);
    }

    /** @param spaced whether a space is to follow, because the sentence goes on in another text */
    void draw(Pen pen, int line, double x, double baseline, Mark.Ink ink, TagSlot tag, boolean spaced) {
        double at = x;
        List<Piece> pieces = lines.get(line).pieces();
        for (int i = 0; i < pieces.size(); i++) {
            boolean space = spaced && i == pieces.size() - 1;
            Piece piece = space ? pieces.get(i).spaced() : pieces.get(i);
            Run run = runs.get(piece.run());
            TagSlot own = tag.of(piece.run(), run, abbreviations.expansion(run));
            double width = piece.width() * size / 1000;
            pen.words(at, baseline, piece, size, ink, Optional.of(own));
            if (TagSlot.isLink(run)) {
                pen.link(at, baseline - 0.75 * size, width, size, run.link(), own);
            }
            at += width;
        }
    }

    /** Draws a line as decoration that is passed over when the sheet is read aloud. */
    void drawSilent(Pen pen, int line, double x, double baseline, Mark.Ink ink) {
        double at = x;
        for (Piece piece : lines.get(line).pieces()) {
            pen.words(at, baseline, piece, size, ink, Optional.empty());
            at += piece.width() * size / 1000;
        }
    }
}
