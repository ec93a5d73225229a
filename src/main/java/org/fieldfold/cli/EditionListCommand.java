package org.fieldfold.cli;

import java.util.concurrent.Callable;
import org.fieldfold.Editions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code edition list}: the years there are. */
@Command(name = "list", mixinStandardHelpOptions = true,
        description = "Lists the editions that were issued and the one that is open: dates, who signed, how "
            + "many entries and files, and the seal of the ledger.")
final class EditionListCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ContentOption content;

    EditionListCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Editions.list(content.folder).forEach(terminal.out()::println);
        return 0;
    }
}
