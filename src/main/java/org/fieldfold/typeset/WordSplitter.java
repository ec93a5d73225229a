package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.Arrays;
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
        List<Glyph> read = read(runs, voice);
        String[] tokens = tokens(read);
        List<Glyph> glyphs = bind(read, tokens);
        List<Word> words = new ArrayList<>();
        int start = 0;
        for (int i = 0; i < glyphs.size(); i++) {
            if (glyphs.get(i).code == ' ') {
                double penalty = Bindings.attached(before(tokens, i), after(tokens, i)) ? ATTACHED : 0;
                words.add(word(glyphs.subList(start, i), Optional.of(glyphs.get(i)), penalty));
                start = i + 1;
            } else if (opens(glyphs, tokens, i)) {
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

    private static List<Glyph> bind(List<Glyph> glyphs, String[] tokens) {
        List<Glyph> bound = new ArrayList<>(glyphs);
        for (int i = 0; i < glyphs.size(); i++) {
            Glyph glyph = glyphs.get(i);
            if (glyph.code == ' ' && Bindings.bound(before(tokens, i), after(tokens, i))) {
                bound.set(i, new Glyph(BOUND, glyph.face, glyph.run));
            }
        }
        return bound;
    }

    /** For each glyph the characters between the spaces around it; empty for a space, one more at the end. */
    private static String[] tokens(List<Glyph> glyphs) {
        String[] tokens = new String[glyphs.size() + 1];
        StringBuilder text = new StringBuilder();
        int start = 0;
        for (int i = 0; i <= glyphs.size(); i++) {
            if (i == glyphs.size() || isSpace(glyphs.get(i))) {
                Arrays.fill(tokens, start, i, text.toString());
                tokens[i] = "";
                text.setLength(0);
                start = i + 1;
            } else {
                text.appendCodePoint(glyphs.get(i).code);
            }
        }
        return tokens;
    }

    private static String before(String[] tokens, int space) {
        return space == 0 ? "" : tokens[space - 1];
    }

    private static String after(String[] tokens, int space) {
        return tokens[space + 1];
    }

    private static boolean opens(List<Glyph> glyphs, String[] tokens, int at) {
        if ("-–—/.@".indexOf(glyphs.get(at).code) < 0) {
            return false;
        }
        int before = 0;
        for (int i = at - 1; i >= 0 && !isSpace(glyphs.get(i)); i--) {
            before += Character.charCount(glyphs.get(i).code);
        }
        return Bindings.opens(tokens[at], before);
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
