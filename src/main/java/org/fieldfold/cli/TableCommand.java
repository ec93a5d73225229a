package org.fieldfold.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code table}: thresholds, materials, monitoring and translations in a spreadsheet. */
@Command(name = "table", mixinStandardHelpOptions = true, synopsisSubcommandLabel = "COMMAND",
        description = "Takes a table of the base out to a spreadsheet, and brings it back.",
        subcommands = {TableExportCommand.class, TableImportCommand.class})
final class TableCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
