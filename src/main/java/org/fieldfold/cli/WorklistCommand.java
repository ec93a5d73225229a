package org.fieldfold.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.fieldfold.Editions;
import org.fieldfold.edition.Worklist;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code worklist}: what is to be done this winter. */
@Command(name = "worklist", mixinStandardHelpOptions = true,
        description = "Lists what is due and why, by reviewer, and what could hurt a reader most first.")
final class WorklistCommand implements Callable<Integer> {
    /** How the list is written. */
    enum Form { TEXT, CSV }

    private final Terminal terminal;

    @Option(names = "--format", paramLabel = "FORM", defaultValue = "text",
            description = "text or csv (default: ${DEFAULT-VALUE})")
    private Form format;

    @Option(names = "--by", paramLabel = "REVIEWER", description = "only what this reviewer signed last")
    private Optional<String> by = Optional.empty();

    @Mixin
    private BaseOptions base;

    WorklistCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Worklist all = Editions.worklist(base.content, base.asOf);
        Worklist worklist = by.map(all::of).orElse(all);
        terminal.out().print(format == Form.CSV ? worklist.csv() : worklist.text());
        return 0;
    }
}
