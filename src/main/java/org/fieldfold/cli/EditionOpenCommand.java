package org.fieldfold.cli;

import java.util.concurrent.Callable;
import org.fieldfold.Editions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code edition open}: the next year begins. */
@Command(name = "open", mixinStandardHelpOptions = true,
        description = "Moves edition.yaml on to another year: its year and dates, nothing else. From then "
            + "on every entry is due to be re-read and signed.")
final class EditionOpenCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "YEAR", description = "the year of the new edition, as in 2028")
    private int year;

    @Mixin
    private ContentOption content;

    EditionOpenCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Editions.open(content.folder, year).forEach(terminal.out()::println);
        return 0;
    }
}
