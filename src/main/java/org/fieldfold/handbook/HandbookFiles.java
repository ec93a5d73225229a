package org.fieldfold.handbook;

import java.util.Optional;
import java.util.function.Supplier;
import org.fieldfold.report.Checksums;

/** Where the files of a handbook go, one by one as they are written, so that they need not all be held at once. */
public interface HandbookFiles {
    /**
     * What is to be known of a file there.
     *
     * @param check of its bytes, see {@link Checksums}
     */
    record Standing(int size, long check) {
        static Standing of(byte[] bytes) {
            return new Standing(bytes.length, Checksums.of(bytes));
        }
    }

    /**
     * Takes a file.
     *
     * @param path below the output folder, with {@code /}
     * @param madeOf a hash of all that it is made of; a file that stands there and was made of the same is the same
     * @param make makes it, and is asked once at most
     */
    Standing put(String path, Optional<String> madeOf, Supplier<byte[]> make);
}
