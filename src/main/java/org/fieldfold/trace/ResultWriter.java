package org.fieldfold.trace;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Writes results down with what they lean on. A text that comes again is written as its number. */
public final class ResultWriter {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final DataOutputStream out = new DataOutputStream(bytes);
    private final Map<String, Integer> texts = new HashMap<>();

    public void number(int number) {
        try {
            out.writeInt(number);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    public void fraction(double fraction) {
        long bits = Double.doubleToLongBits(fraction);
        number((int) (bits >> Integer.SIZE));
        number((int) bits);
    }

    public void text(String text) {
        int at = texts.getOrDefault(text, texts.size());
        number(at);
        if (at == texts.size()) {
            texts.put(text, at);
            byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
            number(utf8.length);
            bytes.writeBytes(utf8);
        }
    }

    void texts(Collection<String> all) {
        number(all.size());
        all.forEach(this::text);
    }

    void perhaps(Optional<String> text) {
        number(text.isPresent() ? 1 : 0);
        text.ifPresent(this::text);
    }

    byte[] bytes() {
        return bytes.toByteArray();
    }
}
