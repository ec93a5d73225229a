package org.fieldfold;

import java.io.IOException;
import java.util.function.Supplier;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.pdf.PrintJob;

/**
 * One file of a build, with all that is to be known before it is printed.
 *
 * @param job sets it; asked for only when no earlier build has printed the same
 */
record PrintedSheet(SheetFacts facts, Supplier<PrintJob> job) {
    void print(PrintRoom room, OutputFolder folder) throws IOException {
        room.print(facts.order(), job, facts.path(), folder);
    }
}
