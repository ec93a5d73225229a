package org.fieldfold.output;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Optional;

/** A file could not be written: the disk is full, the folder is locked, another program holds it. */
public final class UnwritableException extends IOException {
    /** @param kept what did not suffer, as a clause: 'the last build stays as it was' */
    public UnwritableException(Path file, String kept, Exception cause) {
        super("could not write " + file + ": " + reason(cause) + "; " + kept + ". Make room on the disk, close "
                + "what has the folder open, or write to a folder of your own, then give the command again", cause);
    }

    private static String reason(Exception cause) {
        if (cause instanceof AccessDeniedException) {
            return "no permission";
        }
        if (cause instanceof FileAlreadyExistsException) {
            return "something else is in its place";
        }
        return Optional.of(cause).filter(FileSystemException.class::isInstance)
                .map(failed -> ((FileSystemException) failed).getReason())
                .or(() -> Optional.ofNullable(cause.getMessage())).orElse(cause.getClass().getSimpleName());
    }
}
