package org.fieldfold.cli;

import java.io.PrintStream;
import java.time.LocalDate;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * What a command talks to; handed in, so that tests run commands inside their own process.
 *
 * @param interactive whether a person is looking: colour and progress only then
 * @param nanos a clock for 'done in 1.2 s', never for anything that is written to a file
 * @param today the date that {@code sign} and {@code edition issue} write; nothing else asks for it
 */
public record Terminal(PrintStream out, PrintStream err, boolean interactive, LongSupplier nanos,
        Supplier<LocalDate> today) {
    /** A terminal for commands that need no date. */
    public Terminal(PrintStream out, PrintStream err, boolean interactive, LongSupplier nanos) {
        this(out, err, interactive, nanos, () -> {
            throw new IllegalStateException("expected a calendar on this terminal, found none");
        });
    }

    /** Shows how far long work is; erased by the next call. */
    void progress(String what) {
        if (interactive) {
            err.print("\r\u001b[K" + what);
            err.flush();
        }
    }

    void progressDone() {
        if (interactive) {
            err.print("\r\u001b[K");
            err.flush();
        }
    }
}
