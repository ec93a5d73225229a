package org.fieldfold.pdf;

/** A figure as it was handed in: how wide it is for its height, and its artwork once that is wanted. */
sealed interface Figure permits VectorFigure, RasterFigure, KnownDrawing {
    /** Width divided by height. */
    double aspect();

    /** Makes the artwork. */
    Artwork render();

    /** Tells a drawing from a picture by its first bytes. */
    static Figure of(String id, byte[] content) {
        if (RasterFigure.recognises(content)) {
            return RasterFigure.of(id, content);
        }
        return VectorFigure.of(id, content);
    }
}
