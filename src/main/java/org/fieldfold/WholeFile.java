package org.fieldfold;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardCopyOption;
import org.fieldfold.output.UnwritableException;

/** Puts new bytes in the place of a file, whole or not at all. */
public final class WholeFile {
    private WholeFile() {
    }

    /** @throws UnwritableException when it cannot be written; then the file is as it was */
    public static void write(Path file, byte[] bytes) throws IOException {
        Path next = file.resolveSibling("." + file.getFileName() + ".next");
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            try {
                Files.write(next, bytes);
                Files.move(next, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(next);
            }
        } catch (IOException | ReadOnlyFileSystemException failed) {
            throw new UnwritableException(file, "what stood there stays", failed);
        }
    }
}
