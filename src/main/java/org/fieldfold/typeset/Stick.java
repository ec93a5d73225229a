package org.fieldfold.typeset;

import java.util.List;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/**
 * A composing stick: the measure and the type that blocks are set in.
 *
 * @param measure width of the column, in points
 * @param ink of titles
 * @param folio how panels are numbered
 */
record Stick(TypeMetrics metrics, FigureShapes shapes, WordCase words, Leading leading, double measure,
        Mark.Ink ink, Folio folio, Abbreviations abbreviations, Remarks remarks) {
    private static final double LARGEST_OF_POCKET = 9.5;

    double size() {
        return leading.size();
    }

    /** By how much drawings are larger than those of a pocket guide, to go with the type. */
    double enlargement() {
        return Math.max(1, size() / LARGEST_OF_POCKET);
    }

    SetText body(List<Run> runs, double width, Span origin) {
        return text(runs, Voice.TEXT, size(), width, origin);
    }

    /** @param width of the column, in points */
    SetText text(List<Run> text, Voice voice, double typeSize, double width, Span origin) {
        WordCase.Text known = known(text, voice, abbreviations, origin);
        WordCase.Broken broken = known.lines(Math.max(1, width) * 1000 / typeSize);
        broken.tooWide().forEach(word -> remarks.wordTooWide(origin, word));
        return new SetText(known.runs(), broken.lines(), typeSize, abbreviations);
    }

    /** A text as one line, however wide. */
    SetText line(List<Run> text, Voice voice, double typeSize, Span origin) {
        WordCase.Text known = known(text, voice, abbreviations, origin);
        List<Word> all = known.cut().words();
        return new SetText(known.runs(), all.isEmpty() ? List.of() : List.of(Line.of(all, false)), typeSize,
                abbreviations);
    }

    /** The widest word of a text, in points. */
    double widestWord(List<Run> runs, Voice voice, double typeSize, Span origin) {
        return known(runs, voice, Abbreviations.NONE, origin).cut().words().stream().mapToDouble(Word::width).max()
                .orElse(0) * typeSize / 1000;
    }

    private WordCase.Text known(List<Run> runs, Voice voice, Abbreviations apart, Span origin) {
        WordCase.Text known = words.text(runs, voice, apart);
        for (WordSplitter.Missing missing : known.cut().missing()) {
            remarks.missingGlyph(origin, missing.face(), missing.codePoint());
        }
        return known;
    }

    /** The same stick, narrower. */
    Stick narrower(double by) {
        return new Stick(metrics, shapes, words, leading, measure - by, ink, folio, abbreviations, remarks);
    }

    /** The same stick, with panels numbered otherwise. */
    Stick numbering(Folio other) {
        return new Stick(metrics, shapes, words, leading, measure, ink, other, abbreviations, remarks);
    }

    /** The same stick, with what it learns of words kept apart. */
    Stick knowing(WordCase own) {
        return new Stick(metrics, shapes, own, leading, measure, ink, folio, abbreviations, remarks);
    }

    /** The same stick, with what is to be said kept apart. */
    Stick remarking(Remarks own) {
        return new Stick(metrics, shapes, words, leading, measure, ink, folio, abbreviations, own);
    }
}
