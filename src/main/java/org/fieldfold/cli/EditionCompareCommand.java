package org.fieldfold.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.fieldfold.Editions;
import org.fieldfold.edition.Comparison;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code edition compare}: what changed. */
@Command(name = "compare", mixinStandardHelpOptions = true,
        description = "Says fact by fact what changed between two editions. Without years: from the last "
            + "issued edition to the content as it stands.")
final class EditionCompareCommand implements Callable<Integer> {
    /** How the changes are written. */
    enum Form { TEXT, JSON }

    private final Terminal terminal;

    @Parameters(index = "0", arity = "0..1", paramLabel = "FROM",
            description = "the older edition, as in 2026")
    private Optional<Integer> from = Optional.empty();

    @Parameters(index = "1", arity = "0..1", paramLabel = "TO",
            description = "the newer edition (default: the content as it stands)")
    private Optional<Integer> to = Optional.empty();

    @Option(names = "--format", paramLabel = "FORM", defaultValue = "text",
            description = "text or json (default: ${DEFAULT-VALUE})")
    private Form format;

    @Mixin
    private ContentOption content;

    EditionCompareCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Comparison comparison = Editions.compare(content.folder, from, to);
        terminal.out().print(format == Form.JSON ? comparison.json() : comparison.text());
        return 0;
    }
}
