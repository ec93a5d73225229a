package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.prose.Run;

/**
 * Cuts runs into words: at spaces, after dashes and '/', never where {@link Bindings} holds things together.
 */
final class WordSplitter {
    private static final double ATTACHED = 0.08;
    private static final double AFTER_MARK = 0.03;
    /** Stands for a space at which no line ends. */
    private static final int BOUND = 0xA0;

    private final TypeMetrics metrics;
    private final List<Missing> missing = new ArrayList<>();

    private WordSplitter(TypeMetrics metrics) {
        this.metrics = metrics;
    }

    /** A character that a face has no shape for. */
    record Missing(Face face, int codePoint) {}

    /** The words of a text, and what could not be drawn of it. */
    record Cut(List<Word> words, List<Missing> missing) {
        Cut {
            words = List.copyOf(words);
            missing = List.copyOf(missing);
        }
    }

    static Cut split(List<Run> runs, Voice voice, TypeMetrics metrics) {
        WordSplitter splitter = new WordSplitter(metrics);
        return new Cut(splitter.split(runs, voice), splitter.missing);
    }

    private List<Word> split(List<Run> runs, Voice voice) {
        List<Glyph> glyphs = bind(read(runs, voice));
        List<Word> words = new ArrayList<>();
        int start = 0;
        for (int i = 0; i < glyphs.size(); i++) {
            if (glyphs.get(i).code == ' ') {
                String before = token(glyphs, i, -1);
                String after = token(glyphs, i, 1);
                double penalty = Bindings.attached(before, after) ? ATTACHED : 0;
                words.add(word(glyphs.subList(start, i), Optional.of(glyphs.get(i)), penalty));
                start = i + 1;
            } else if (opens(glyphs, i)) {
                words.add(word(glyphs.subList(start, i + 1), Optional.empty(), AFTER_MARK));
                start = i + 1;
            }
        }
        if (start < glyphs.size()) {
            words.add(word(glyphs.subList(start, glyphs.size()), Optional.empty(), 0));
        }
        return words;
    }

    private record Glyph(int code, Face face, int run) {}

    /** One glyph a character, white space drawn together, none at either end. */
    private List<Glyph> read(List<Run> runs, Voice voice) {
        List<Glyph> glyphs = new ArrayList<>();
        for (int r = 0; r < runs.size(); r++) {
            Face face = voice.face(runs.get(r).style());
            String text = runs.get(r).text();
            for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
                int code = text.codePointAt(i);
                boolean space = Character.isWhitespace(code) || Character.isSpaceChar(code);
                boolean held = code == BOUND || code == 0x202F || code == 0x2007;
                int last = glyphs.isEmpty() ? ' ' : glyphs.get(glyphs.size() - 1).code;
                if (space && (last == ' ' || last == BOUND)) {
                    continue;
                }
                if (!space && !metrics.has(face, code)) {
                    missing.add(new Missing(face, code));
                    code = '?';
                }
                glyphs.add(new Glyph(held ? BOUND : space ? ' ' : code, face, r));
            }
        }
        while (!glyphs.isEmpty() && isSpace(glyphs.get(glyphs.size() - 1))) {
            glyphs.remove(glyphs.size() - 1);
        }
        return glyphs;
    }

    private static boolean isSpace(Glyph glyph) {
        return glyph.code == ' ' || glyph.code == BOUND;
    }

    private static List<Glyph> bind(List<Glyph> glyphs) {
        List<Glyph> bound = new ArrayList<>(glyphs);
        for (int i = 0; i < glyphs.size(); i++) {
            Glyph glyph = glyphs.get(i);
            if (glyph.code == ' ' && Bindings.bound(token(glyphs, i, -1), token(glyphs, i, 1))) {
                bound.set(i, new Glyph(BOUND, glyph.face, glyph.run));
            }
        }
        return bound;
    }

    /** The characters between {@code at} and the next space in the direction of {@code step}. */
    private static String token(List<Glyph> glyphs, int at, int step) {
        int end = at + step;
        while (end >= 0 && end < glyphs.size() && !isSpace(glyphs.get(end))) {
            end += step;
        }
        StringBuilder text = new StringBuilder();
        for (int i = Math.min(at, end) + 1; i < Math.max(at, end); i++) {
            text.appendCodePoint(glyphs.get(i).code);
        }
        return text.toString();
    }

    private static boolean opens(List<Glyph> glyphs, int at) {
        if ("-–—/.@".indexOf(glyphs.get(at).code) < 0) {
            return false;
        }
        String before = token(glyphs, at, -1);
        String after = token(glyphs, at, 1);
        return Bindings.opens(before + new String(Character.toChars(glyphs.get(at).code)) + after,
                before.length());
    }

    private Word word(List<Glyph> glyphs, Optional<Glyph> space, double penalty) {
        List<Piece> pieces = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= glyphs.size(); i++) {
            if (i == glyphs.size() || glyphs.get(i).face != glyphs.get(start).face
                    || glyphs.get(i).run != glyphs.get(start).run) {
                pieces.add(piece(glyphs.subList(start, i)));
                start = i;
            }
        }
        return new Word(pieces, space.map(glyph -> piece(List.of(glyph))), penalty);
    }

    private Piece piece(List<Glyph> glyphs) {
        StringBuilder text = new StringBuilder();
        glyphs.forEach(glyph -> text.appendCodePoint(glyph.code == BOUND ? ' ' : glyph.code));
        Glyph first = glyphs.get(0);
        return new Piece(first.face, first.run, text.toString(), metrics.width(first.face, text.toString()));
    }
}
