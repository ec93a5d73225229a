package org.fieldfold.trace;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads what {@link ResultWriter} wrote.
 *
 * <p>Bytes of any other form end in a {@link BufferUnderflowException} or an {@link IllegalArgumentException}.
 */
public final class ResultReader {
    private final ByteBuffer in;
    private final List<String> texts = new ArrayList<>();

    ResultReader(byte[] bytes) {
        this.in = ByteBuffer.wrap(bytes);
    }

    public int number() {
        return in.getInt();
    }

    public double fraction() {
        return in.getDouble();
    }

    /** A number of things that follow, each of one byte at least. */
    public int count() {
        int count = in.getInt();
        if (count < 0 || count > in.remaining()) {
            throw new IllegalArgumentException("expected at most " + in.remaining() + " things, found " + count);
        }
        return count;
    }

    public String text() {
        int at = in.getInt();
        if (at == texts.size()) {
            byte[] utf8 = new byte[count()];
            in.get(utf8);
            texts.add(new String(utf8, StandardCharsets.UTF_8));
        } else if (at < 0 || at > texts.size()) {
            throw new IllegalArgumentException("expected one of " + texts.size() + " texts, found " + at);
        }
        return texts.get(at);
    }

    Set<String> texts() {
        Set<String> all = new HashSet<>();
        for (int left = count(); left > 0; left--) {
            all.add(text());
        }
        return all;
    }

    Optional<String> perhaps() {
        return number() == 1 ? Optional.of(text()) : Optional.empty();
    }
}
