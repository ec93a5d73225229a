package org.fieldfold.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import org.fieldfold.report.Checksums;

/**
 * A file of a build as the next build knows it.
 *
 * @param check of its bytes, see {@link Checksums}: quicker to verify than the hash
 * @param madeOf a hash of all that it was made of, where it was given one
 */
public record Published(String path, long size, String sha256, long check, Optional<String> madeOf) {
    /** As a manifest lists it. */
    public OutputFile file() {
        return new OutputFile(path, size, sha256);
    }

    /** Its bytes in a build, when they are still what was written. */
    Optional<byte[]> in(Path build) {
        try {
            Path file = build.resolve(path);
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) != size) {
                return Optional.empty();
            }
            byte[] bytes = Files.readAllBytes(file);
            return bytes.length == size && Checksums.of(bytes) == check ? Optional.of(bytes) : Optional.empty();
        } catch (IOException | SecurityException unread) {
            return Optional.empty();
        }
    }
}
