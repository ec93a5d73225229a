package org.fieldfold.handbook;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * What stands in one file, in the bytes of that file as soon as it is written: as text, with a copy for every step on
 * its way, a book of thousands of pages would take several times the memory of its base.
 */
final class WholeBook {
    private final List<byte[]> parts = new ArrayList<>();

    WholeBook add(String text) {
        return add(text.getBytes(StandardCharsets.UTF_8));
    }

    WholeBook add(byte[] bytes) {
        parts.add(bytes);
        return this;
    }

    /** All that was added so far. */
    List<byte[]> parts() {
        return List.copyOf(parts);
    }

    byte[] bytes() {
        int length = 0;
        for (byte[] part : parts) {
            length = Math.addExact(length, part.length);
        }
        byte[] whole = new byte[length];
        int end = 0;
        for (byte[] part : parts) {
            System.arraycopy(part, 0, whole, end, part.length);
            end += part.length;
        }
        return whole;
    }
}
