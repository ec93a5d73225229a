package org.fieldfold.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.fieldfold.Spreadsheets;
import org.fieldfold.content.TableEdits;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code table import}. */
@Command(name = "import", mixinStandardHelpOptions = true,
        description = "Says what a table from a spreadsheet would change, and with --apply changes it in the "
            + "files, comments and all else staying. What is not understood is named by row and column; then "
            + "nothing is changed. Rows and columns that are left out change nothing.")
final class TableImportCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private TableChoice table;

    @Parameters(index = "1", paramLabel = "FILE", description = "the table, as CSV in UTF-8")
    private Path file;

    @Option(names = "--apply", description = "change the files")
    private boolean apply;

    @Mixin
    private ContentOption content;

    TableImportCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        TableEdits edits = table.language().isPresent()
                ? Spreadsheets.editTranslations(content.folder, table.language().get(), file, apply)
                : Spreadsheets.edits(content.folder, table.kind(), file, apply);
        edits.changes().forEach(terminal.out()::println);
        edits.refusals().forEach(line -> terminal.err().println("fieldfold: " + line));
        int count = edits.changes().size();
        String changes = count == 1 ? "1 change" : count + " changes";
        if (!edits.refusals().isEmpty()) {
            terminal.err().println("nothing was changed; mend the table, then import it again");
            return 1;
        }
        terminal.out().println(count == 0 ? "no change" : apply ? changes + " made; 'fieldfold check' looks "
                + "at them" : changes + "; --apply makes them");
        return 0;
    }
}
