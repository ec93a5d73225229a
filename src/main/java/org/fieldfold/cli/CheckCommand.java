package org.fieldfold.cli;

import java.util.concurrent.Callable;
import org.fieldfold.Compiler;
import org.fieldfold.report.FindingFormat;
import org.fieldfold.source.Severity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code check}: findings only. */
@Command(name = "check", mixinStandardHelpOptions = true,
        description = "Reads every file of the content base and says what is not in order.")
final class CheckCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private BaseOptions base;

    @Option(names = "--format", paramLabel = "FORM", defaultValue = "text",
            description = "text, json, sarif or junit (default: ${DEFAULT-VALUE})")
    private FindingFormat format;

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Compiler.Checked checked = Compiler.check(base.content, base.asOf);
        terminal.out().print(format.write(checked.findings(), terminal.interactive()));
        return checked.findings().stream().anyMatch(finding -> finding.severity() == Severity.ERROR) ? 1 : 0;
    }
}
