package org.fieldfold.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.function.BiFunction;

/** Where commands are given in tests: a content base of one's own, and what a command left behind. */
final class Desk {
    /** Small and sound. */
    static final Path SOUND = Path.of("src/test/resources/org/fieldfold/check/base");

    /** What a command left behind. */
    record Run(int status, String out, String err) {
    }

    private Desk() {
    }

    /** Gives a command. */
    static Run run(BiFunction<PrintStream, PrintStream, Terminal> terminal, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = CommandLineTool.run(args, terminal.apply(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8)));
        return new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
