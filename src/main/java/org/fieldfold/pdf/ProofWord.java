package org.fieldfold.pdf;

import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.TypeMetrics;

/**
 * Where a word lies that runs up across a box: as large as fits, from lower left to upper right, y up.
 *
 * @param x of the first letter's foot
 */
record ProofWord(double size, double x, double y, double cos, double sin) {
    static final Face FACE = Face.BOLD;
    /** Width of the outline in points: a hairline that an office printer still shows. */
    static final double LINE = 0.3;
    private static final double SHARE = 0.94;

    static ProofWord of(String word, TypeMetrics metrics, double width, double height) {
        double run = metrics.width(FACE, word) / 1000;
        double cap = metrics.capHeight(FACE) / 1000;
        double diagonal = StrictMath.sqrt(width * width + height * height);
        double cos = width / diagonal;
        double sin = height / diagonal;
        // the box of the turned word, in ems
        double across = run * cos + cap * sin;
        double up = run * sin + cap * cos;
        double size = SHARE * Math.min(width / across, height / up);
        double x = (width - size * across) / 2 + size * cap * sin;
        double y = (height - size * up) / 2;
        return new ProofWord(size, x, y, cos, sin);
    }

    ProofWord moved(double right, double up) {
        return new ProofWord(size, x + right, y + up, cos, sin);
    }
}
