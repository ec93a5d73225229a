package org.fieldfold.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.fieldfold.Compiler;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code explain}: the page of a rule. */
@Command(name = "explain", mixinStandardHelpOptions = true,
        description = "Says what a rule asks, why, and how a finding is mended. Without a name: "
            + "lists all rules.")
final class ExplainCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(arity = "0..1", paramLabel = "RULE", description = "the name in brackets behind a finding")
    private String rule;

    ExplainCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (rule == null) {
            int widest = Compiler.rules().keySet().stream().mapToInt(String::length).max().orElse(0);
            Compiler.rules().forEach((name, asks) ->
                    terminal.out().println(name + " ".repeat(widest + 2 - name.length()) + asks));
            return 0;
        }
        Optional<String> page = Compiler.explain(rule);
        if (page.isEmpty()) {
            terminal.err().println("fieldfold: expected the name of a rule, found '" + rule + "'; "
                    + Compiler.nearestRule(rule).map(near -> "did you mean '" + near + "'?")
                            .orElse("'fieldfold explain' without a name lists them"));
            return 2;
        }
        terminal.out().print(page.get());
        return 0;
    }
}
