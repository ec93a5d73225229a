package org.fieldfold.handbook;

import java.util.Objects;

/**
 * One file of the handbook.
 *
 * @param path below the output folder, with {@code /}
 * @param bytes the file as it is
 */
public record HandbookFile(String path, byte[] bytes) {
    public HandbookFile {
        Objects.requireNonNull(bytes, path);
    }
}
