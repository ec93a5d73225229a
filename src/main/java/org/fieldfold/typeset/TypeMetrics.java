package org.fieldfold.typeset;

/** How wide type runs. Supplied by whoever owns the fonts; tests supply a fixed-width one. */
public interface TypeMetrics {
    /** Width of {@code text} in thousandths of the type size. */
    double width(Face face, String text);

    /** Whether the face has a shape for the character. */
    boolean has(Face face, int codePoint);

    /** Height of a capital letter, in thousandths of the type size. */
    double capHeight(Face face);
}
