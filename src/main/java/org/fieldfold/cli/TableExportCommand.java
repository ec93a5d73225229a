package org.fieldfold.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.fieldfold.Spreadsheets;
import org.fieldfold.content.TableKind;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code table export}. */
@Command(name = "export", mixinStandardHelpOptions = true,
        description = "Writes a table as comma-separated values. Cells that a spreadsheet would take for a "
            + "formula begin with an apostrophe.")
final class TableExportCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "TABLE", description = "thresholds, materials or monitoring")
    private TableKind kind;

    @Option(names = "--to", required = true, paramLabel = "FILE", description = "the file to write")
    private Path file;

    @Mixin
    private ContentOption content;

    TableExportCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Spreadsheets.export(content.folder, kind, file);
        terminal.out().println(file);
        return 0;
    }
}
