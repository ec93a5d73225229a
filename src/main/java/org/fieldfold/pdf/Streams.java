package org.fieldfold.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Streams of a document. */
final class Streams {
    private Streams() {}

    /** A stream as it is. */
    static COSStream plain(PDDocument document, byte[] data) throws IOException {
        COSStream stream = document.getDocument().createCOSStream();
        try (OutputStream out = stream.createRawOutputStream()) {
            out.write(data);
        }
        return stream;
    }

    /** A compressed stream. */
    static COSStream deflated(PDDocument document, byte[] data) throws IOException {
        return FinishedStream.of(data).copyInto(document);
    }

    /** The colour profile that ships, compressed once. */
    static Frozen colourProfile() {
        try (PDDocument scratch = new PDDocument();
                InputStream in = Streams.class.getResourceAsStream("sheet-rgb.icc")) {
            if (in == null) {
                throw new IllegalStateException("the colour profile sheet-rgb.icc is missing");
            }
            COSStream profile = deflated(scratch, in.readAllBytes());
            profile.setInt(COSName.N, 3);
            return Frozen.of(profile);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
