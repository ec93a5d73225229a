package org.fieldfold.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.fieldfold.Signing;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code sign}: an entry was re-read. */
@Command(name = "sign", mixinStandardHelpOptions = true,
        description = "Writes today's date and the reviewer's name into an entry that was re-read. Nothing "
            + "else in the file changes.")
final class SignCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(arity = "1..*", paramLabel = "ID", description = "the entry, as in onion-thrips")
    private List<String> ids;

    @Option(names = "--by", required = true, paramLabel = "REVIEWER",
            description = "who re-read it, as in edition.yaml")
    private String by;

    @Option(names = "--carried-over",
            description = "states that nothing changed since the last edition; refused if something did")
    private boolean carriedOver;

    @Mixin
    private ContentOption content;

    SignCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        for (Path file : Signing.sign(content.folder, ids, by, carriedOver, terminal.today().get())) {
            terminal.out().println(file);
        }
        return 0;
    }
}
