package org.fieldfold.pdf;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSFloat;

/** A box on a page: points, origin bottom left, y up. */
record PageBox(double left, double bottom, double right, double top) {

    PageBox and(PageBox other) {
        return new PageBox(Math.min(left, other.left), Math.min(bottom, other.bottom), Math.max(right,
                other.right), Math.max(top, other.top));
    }

    COSArray toArray() {
        return numbers(left, bottom, right, top);
    }

    static COSArray numbers(double... values) {
        COSArray array = new COSArray();
        for (double value : values) {
            array.add(new COSFloat((float) (Operators.thousandths(value) / 1000.0)));
        }
        return array;
    }
}
