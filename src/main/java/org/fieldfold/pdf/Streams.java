package org.fieldfold.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.cos.COSName;

/** Streams that ship. */
final class Streams {
    private Streams() {}

    /** The colour profile, compressed once. */
    static Frozen colourProfile() {
        try (InputStream in = Streams.class.getResourceAsStream("sheet-rgb.icc")) {
            if (in == null) {
                throw new IllegalStateException("the colour profile sheet-rgb.icc is missing");
            }
            StreamObject profile = FinishedStream.of(in.readAllBytes()).object();
            profile.setInt(COSName.N, 3);
            return Frozen.of(profile);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
