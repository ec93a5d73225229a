package org.fieldfold;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Puts new bytes in the place of a file, whole or not at all. */
final class WholeFile {
    private WholeFile() {
    }

    static void write(Path file, byte[] bytes) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        Path next = file.resolveSibling("." + file.getFileName() + ".next");
        try {
            Files.write(next, bytes);
            Files.move(next, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(next);
        }
    }
}
