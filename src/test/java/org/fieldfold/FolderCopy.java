package org.fieldfold;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.stream.Stream;

/** A folder with all that is in it, once more, to be changed. */
public final class FolderCopy {
    private FolderCopy() {
    }

    /**
     * Copies it; what stands at the other place under the same name is replaced.
     *
     * @return the other place
     */
    public static Path of(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path copy = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
                }
            }
        }
        return to;
    }
}
