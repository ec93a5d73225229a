package org.fieldfold.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code edition}: the years. */
@Command(name = "edition", mixinStandardHelpOptions = true, synopsisSubcommandLabel = "COMMAND",
        description = "Opens the next edition, issues it, and says what changed from one to another.",
        subcommands = {EditionOpenCommand.class, EditionIssueCommand.class, EditionCompareCommand.class,
            EditionListCommand.class})
final class EditionCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
