package org.fieldfold.pdf;

import org.apache.pdfbox.cos.COSBase;

/**
 * A figure, ready to be placed.
 *
 * @param object its form or image
 * @param unitWidth width of what {@code object} draws when it is placed as it is
 */
record Artwork(Frozen object, double unitWidth, double unitHeight) {
    COSBase copy() {
        return object.copy();
    }
}
