package org.fieldfold.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;

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
                        () -> Today.of(Optional.ofNullable(System.getenv("SOURCE_DATE_EPOCH")),
                                LocalDate::now)));
        if (status != 0) {
            System.exit(status);
        }
    }
}
