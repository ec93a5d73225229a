package org.fieldfold.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.fieldfold.Spreadsheets;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code table export}. */
@Command(name = "export", mixinStandardHelpOptions = true,
        description = "Writes a table as comma-separated values. Cells that a spreadsheet would take for a "
            + "formula begin with an apostrophe.")
final class TableExportCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private TableChoice table;

    @Option(names = "--to", required = true, paramLabel = "FILE", description = "the file to write")
    private Path file;

    @Mixin
    private ContentOption content;

    TableExportCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        if (table.language().isPresent()) {
            String language = table.language().get();
            int placeless = Spreadsheets.exportTranslations(content.folder, language, file);
            if (placeless > 0) {
                terminal.err().println(placeless + " texts are not in the table, as they have no place in "
                        + "language " + language + " yet; 'fieldfold draft translation " + language
                        + "' makes it, then export again");
            }
        } else {
            Spreadsheets.export(content.folder, table.kind(), file);
        }
        terminal.out().println(file);
        return 0;
    }
}
