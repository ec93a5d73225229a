package org.fieldfold.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.fieldfold.Compiler;
import org.fieldfold.report.FitReport;
import org.fieldfold.source.Finding;
import org.fieldfold.source.FindingPrinter;
import org.fieldfold.source.FindingText;
import org.fieldfold.source.Severity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code compile}: everything that is printed and opened. */
@Command(name = "compile", mixinStandardHelpOptions = true,
        description = "Checks the content base, then builds all guides and the handbook. Nothing is built "
            + "while an error stands; the last build stays as it was.")
final class CompileCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private BaseOptions base;

    @Option(names = "--out", paramLabel = "DIR", defaultValue = "build-output",
            description = "where to build (default: ${DEFAULT-VALUE})")
    private Path out;

    @Option(names = "--proof", description = "build although errors stand, with PROOF on every page")
    private boolean proof;

    @Option(names = "--anew",
            description = "make every file, also those that an earlier build has made of the same "
            + "things and kept beside its output")
    private boolean anew;

    @Option(names = "--format", paramLabel = "FORM", defaultValue = "text",
            description = "text, or json for findings and the fit of every panel (default: ${DEFAULT-VALUE})")
    private Form format;

    /** How it is said what came of a build. */
    private enum Form { TEXT, JSON }

    CompileCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        long start = terminal.nanos().getAsLong();
        Compiler.Built built = Compiler.compile(new Compiler.Request(base.content, out, base.asOf, proof,
                anew),
                terminal::progress);
        terminal.progressDone();
        if (format == Form.JSON) {
            terminal.out().print(FitReport.json(built.findings(), built.fit()));
        } else {
            say(built, start);
        }
        return built.folder().isEmpty() || built.findings().stream()
                .anyMatch(finding -> finding.severity() == Severity.ERROR) ? 1 : 0;
    }

    private void say(Compiler.Built built, long start) {
        List<Finding> told = worthSaying(built.findings());
        terminal.err().print(new FindingText(terminal.interactive()).told(told) + FindingText.places(told));
        terminal.err().println(FindingPrinter.summary(built.findings()));
        if (built.folder().isEmpty()) {
            terminal.err().println("nothing was built; mend the errors, or build a marked copy with --proof");
            return;
        }
        double seconds = (terminal.nanos().getAsLong() - start) / 1e9;
        terminal.out().printf(Locale.ROOT, built.unchanged()
                ? "nothing has changed since %d files were built in %s, %.1f s%n" : "%d files in %s, %.1f s%n",
                built.files(), built.folder().get(), seconds);
        for (String line : built.whereToLook()) {
            terminal.out().println("  " + line);
        }
    }

    private static List<Finding> worthSaying(List<Finding> findings) {
        return findings.stream().filter(finding -> finding.severity() != Severity.INFO).toList();
    }
}
