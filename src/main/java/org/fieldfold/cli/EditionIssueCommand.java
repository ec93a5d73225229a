package org.fieldfold.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.fieldfold.Compiler;
import org.fieldfold.Issue;
import org.fieldfold.source.Finding;
import org.fieldfold.source.FindingPrinter;
import org.fieldfold.source.FindingText;
import org.fieldfold.source.Severity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code edition issue}: the year is frozen. */
@Command(name = "issue", mixinStandardHelpOptions = true,
        description = "Builds the edition and writes its ledger, issued/YEAR.json. Refused while an error "
            + "stands, or an entry is due and not signed. From then on the year can be built again byte for "
            + "byte, or not at all.")
final class EditionIssueCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private BaseOptions base;

    @Option(names = "--out", paramLabel = "DIR", defaultValue = "build-output",
            description = "where to build (default: ${DEFAULT-VALUE})")
    private Path out;

    @Parameters(index = "0", arity = "0..1", paramLabel = "YEAR",
            description = "the year that is meant, as in 2028; refused where edition.yaml has another")
    private Optional<Integer> year = Optional.empty();

    EditionIssueCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Issue.Issued issued = Issue.edition(new Compiler.Request(base.content, out, base.asOf, false), year,
                terminal.today().get(), terminal::progress);
        terminal.progressDone();
        if (issued.ledger().isEmpty()) {
            List<Finding> errors = issued.built().findings().stream()
                    .filter(finding -> finding.severity() == Severity.ERROR).toList();
            terminal.err().print(new FindingText(terminal.interactive()).told(errors) + FindingText.places(errors));
            terminal.err().println(FindingPrinter.summary(issued.built().findings()));
            terminal.err().println("nothing was issued; mend the errors, then issue again");
            return 1;
        }
        terminal.out().println(issued.built().files() + " files in " + issued.built().folder().get());
        terminal.out().println("ledger " + issued.ledger().get());
        terminal.out().println("seal   " + issued.seal());
        List<Finding> behind = issued.built().findings().stream()
                .filter(finding -> finding.rule().equals("translation-due")
                        || finding.rule().equals("translation-missing")).toList();
        if (!behind.isEmpty()) {
            terminal.out().println("translations were behind in " + behind.stream()
                    .map(finding -> finding.span().file().path()).distinct().collect(Collectors.joining(", "))
                    + ": readers see the base language there, and it stays so in this edition.");
        }
        if (issued.byHand() > 0) {
            terminal.out().println(issued.byHand() + " entries were signed by hand, not by 'sign': whether they "
                    + "changed after that can't be told.");
        }
        terminal.out().println("Keep the seal where others have it too: it shows later that the ledger is "
                + "the one of today.");
        return 0;
    }
}
