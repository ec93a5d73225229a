package org.fieldfold.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fieldfold.Compiler;
import org.fieldfold.report.FindingFormat;
import org.fieldfold.source.Finding;
import org.fieldfold.source.FindingPrinter;
import org.fieldfold.source.Severity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code check}: findings only. */
@Command(name = "check", mixinStandardHelpOptions = true,
        description = "Reads every file of the content base and says what is not in order, errors last. With "
            + "ids or files it says only what concerns these, and counts the rest.")
final class CheckCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(arity = "0..*", paramLabel = "ID", description = "only what concerns these: an id, as in "
            + "leek-moth, or a file, as in guides/potato.yaml")
    private List<String> only = List.of();

    @Mixin
    private BaseOptions base;

    @Option(names = "--format", paramLabel = "FORM", defaultValue = "text",
            description = "text, json, sarif or junit (default: ${DEFAULT-VALUE})")
    private FindingFormat format;

    @Option(names = "--out", paramLabel = "DIR", defaultValue = "build-output",
            description = "where 'compile' builds; what it kept there of files that stayed is not worked out "
                + "again (default: ${DEFAULT-VALUE})")
    private Path out;

    @Option(names = "--anew", description = "works everything out, whatever was kept")
    private boolean anew;

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Compiler.Checked checked = anew ? Compiler.check(base.content, base.asOf)
                : Compiler.check(base.content, base.asOf, out);
        AskedFor asked = new AskedFor(only);
        Optional<String> unknown = asked.unknown(checked.paths());
        if (unknown.isPresent()) {
            terminal.err().println("fieldfold: expected an id or a file of " + base.content + ", found '"
                    + unknown.get() + "'");
            return 2;
        }
        List<Finding> told = checked.findings().stream().filter(asked::concerns).toList();
        terminal.out().print(format.write(told, terminal.interactive()));
        if (format == FindingFormat.TEXT && !only.isEmpty()) {
            terminal.out().print("in other files: " + FindingPrinter.summary(checked.findings().stream()
                    .filter(finding -> !asked.concerns(finding)).toList()) + "\n");
        }
        return told.stream().anyMatch(finding -> finding.severity() == Severity.ERROR) ? 1 : 0;
    }
}
