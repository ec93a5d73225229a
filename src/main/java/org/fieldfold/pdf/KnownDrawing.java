package org.fieldfold.pdf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;

/** A drawing that an earlier press has turned into paths. */
record KnownDrawing(double aspect, Artwork render) implements Figure {
    /** Empty for bytes of another form: then it is drawn again. */
    static Optional<Figure> of(byte[] bytes) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            double aspect = in.readDouble();
            double width = in.readDouble();
            double height = in.readDouble();
            return Optional.of(new KnownDrawing(aspect, new Artwork(Frozen.read(in), width, height)));
        } catch (IOException | RuntimeException otherForm) {
            return Optional.empty();
        }
    }

    /** For {@link #of}; empty for artwork that has a value without a form. */
    Optional<byte[]> bytes() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeDouble(aspect);
            out.writeDouble(render.unitWidth());
            out.writeDouble(render.unitHeight());
            render.object().write(out);
        } catch (UncheckedIOException | IOException formless) {
            return Optional.empty();
        }
        return Optional.of(bytes.toByteArray());
    }
}
