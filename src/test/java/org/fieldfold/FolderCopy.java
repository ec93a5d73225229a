package org.fieldfold;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** A content base, or another folder, once more, so that a test may spoil it. */
public final class FolderCopy {
    private FolderCopy() {
    }

    /**
     * Copies all that is in a folder; what stands at the other place under the same name is replaced.
     *
     * @return the other place
     */
    public static Path of(Path from, Path to) throws IOException {
        return of(from, to, file -> true);
    }

    /** @param taken which files, by their path as it is */
    public static Path of(Path from, Path to, Predicate<Path> taken) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).filter(taken).toList()) {
                Path copy = to.resolve(from.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
            }
        }
        return to;
    }
}
