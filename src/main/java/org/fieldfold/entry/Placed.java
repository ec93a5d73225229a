package org.fieldfold.entry;

import org.fieldfold.source.Span;
import org.fieldfold.source.Spans;

/**
 * A record with the places its facts were read from. Two placed records are the same when their facts are.
 */
public record Placed<T>(T value, Spans spans) {
    /** The span of the fact at a path of keys (as written in the file) and 0-based list positions. */
    public Span at(Object... path) {
        return spans.at(path);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Placed<?> placed && placed.value.equals(value);
    }

    @Override
    public int hashCode() {
        return value.hashCode();
    }
}
