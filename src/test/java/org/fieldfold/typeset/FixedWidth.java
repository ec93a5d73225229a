package org.fieldfold.typeset;

/**
 * Every character half as wide as the type is high, so that lines can be counted by hand. Lacks only the
 * snowman.
 */
final class FixedWidth implements TypeMetrics {
    @Override
    public double width(Face face, String text) {
        return 500.0 * text.codePointCount(0, text.length());
    }

    @Override
    public boolean has(Face face, int codePoint) {
        return codePoint != '☃';
    }

    @Override
    public double capHeight(Face face) {
        return 660;
    }
}
