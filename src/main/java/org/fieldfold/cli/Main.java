package org.fieldfold.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

/** Starts Fieldfold from a shell. */
public final class Main {
    private Main() {
    }

    /**
     * Runs one command. Exit status: 0 done, 1 findings of severity error, 2 wrong usage, 3 could not read or
     * write.
     */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int status =
                CommandLineTool.run(args, new Terminal(out, err, System.console() != null, System::nanoTime,
                        Main::today));
        if (status != 0) {
            System.exit(status);
        }
    }

    /**
     * Today, or the day of {@code SOURCE_DATE_EPOCH} (seconds since 1970 in UTC, as the reproducible builds
     * project specifies it), so that signing and issuing can be repeated.
     */
    private static LocalDate today() {
        String epoch = System.getenv("SOURCE_DATE_EPOCH");
        if (epoch == null || epoch.isBlank()) {
            return LocalDate.now();
        }
        try {
            return LocalDate.ofInstant(Instant.ofEpochSecond(Long.parseLong(epoch.strip())), ZoneOffset.UTC);
        } catch (NumberFormatException | DateTimeException wrong) {
            throw new UncheckedIOException(new IOException(
                    "expected seconds since 1970 in SOURCE_DATE_EPOCH, found '" + epoch + "'"));
        }
    }
}
