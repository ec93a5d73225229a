package org.fieldfold.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.apache.pdfbox.cos.COSName;

/**
 * A content stream, compressed once and put into any number of documents.
 *
 * @param sum of what it was before, by which documents are told apart
 */
record FinishedStream(byte[] packed, long sum) {
    private static final int DEFLATE_LEVEL = 6;
    /** Making one takes longer than packing an office's panel with it. */
    private static final ThreadLocal<Deflater> PACKING = ThreadLocal.withInitial(() -> new Deflater(DEFLATE_LEVEL));

    static FinishedStream of(byte[] content) {
        CRC32 sum = new CRC32();
        sum.update(content);
        Deflater deflater = PACKING.get();
        deflater.reset();
        ByteArrayOutputStream packed = new ByteArrayOutputStream(content.length / 3 + 64);
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed, deflater, 8192)) {
            out.write(content);
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory can't fail", impossible);
        }
        return new FinishedStream(packed.toByteArray(), sum.getValue());
    }

    StreamObject object() {
        StreamObject stream = new StreamObject(packed);
        stream.setItem(COSName.FILTER, COSName.FLATE_DECODE);
        return stream;
    }
}
