package org.fieldfold.pdf;

import org.apache.pdfbox.cos.COSDictionary;

/** A stream whose data are ready to be written; its length is told when it is. */
final class StreamObject extends COSDictionary {
    private final byte[] data;

    StreamObject(byte[] data) {
        this.data = data;
    }

    byte[] data() {
        return data;
    }
}
