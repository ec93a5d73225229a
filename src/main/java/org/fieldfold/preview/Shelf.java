package org.fieldfold.preview;

import java.util.Optional;

/** Everything that can be asked for, in memory, under its whole address. Several threads may ask. */
@FunctionalInterface
public interface Shelf {
    /** @param path as it was sent, with its slash, neither decoded nor resolved */
    Optional<Resource> find(String path);
}
