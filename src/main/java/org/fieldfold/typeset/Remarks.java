package org.fieldfold.typeset;

import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/** Collects what is to be said while a guide is set. The same thing is said once. */
final class Remarks {
    private final TreeSet<Finding> findings = new TreeSet<>();
    private int said;

    void add(Finding finding) {
        findings.add(finding);
        said++;
    }

    /** How often something was said, known or new. */
    int said() {
        return said;
    }

    void missingGlyph(Span origin, Face face, int codePoint) {
        String shown = new String(Character.toChars(codePoint));
        add(Finding.error(origin, "glyph-missing", String.format(Locale.ROOT,
                "expected characters that the type has, found U+%04X (%s), for which the %s face has no "
                        + "shape",
                codePoint, shown, face.name().toLowerCase(Locale.ROOT).replace('_', ' ')),
                "write it in letters, or with a character that the type has"));
    }

    void wordTooWide(Span origin, String word) {
        add(Finding.warning(origin, "word-too-wide", "expected words that fit the column, found \"" + word
                + "\", which had to be divided", "use a shorter word, or put a space or a '/' into it"));
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }
}
