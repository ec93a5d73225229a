package org.fieldfold.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.stream.Collectors;
import org.fieldfold.Compiler;
import org.fieldfold.Editions;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Spec;

/** All commands under one name. */
@Command(name = "fieldfold", mixinStandardHelpOptions = true, version = "fieldfold " + Compiler.VERSION,
        synopsisSubcommandLabel = "COMMAND",
        description = {"Turns a folder of pest entries into pocket guides to print and fold, and a handbook "
            + "that opens without a signal.", ""},
        footer = {"", "Most used:",
            "  fieldfold check              is everything in content/ in order?",
            "  fieldfold compile            build all guides and the handbook",
            "  fieldfold explain RULE       what does a finding mean, and how is it mended?", "",
            "Exit status: 0 done, 1 findings of severity error, 2 wrong usage, 3 could not read or write."},
        subcommands = {CheckCommand.class, CompileCommand.class, ExplainCommand.class,
            DraftCommand.class, EditionCommand.class, PackCommand.class, PreviewCommand.class,
            SignCommand.class, TableCommand.class,
            WorklistCommand.class})
final class CommandLineTool implements Runnable {
    private static final int UNREADABLE = 3;
    private static final int REFUSED = 1;

    private final Terminal terminal;

    @Spec
    private CommandSpec spec;

    private CommandLineTool(Terminal terminal) {
        this.terminal = terminal;
    }

    static int run(String[] args, Terminal terminal) {
        CommandLine line = new CommandLine(new CommandLineTool(terminal), new TerminalFactory(terminal));
        line.setOut(new PrintWriter(terminal.out(), true));
        line.setErr(new PrintWriter(terminal.err(), true));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(terminal.interactive() ? Ansi.ON : Ansi.OFF));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpLongOptionsMaxWidth(28);
        line.setParameterExceptionHandler((wrong, given) -> wrongUsage(wrong, terminal));
        line.setExecutionExceptionHandler((failure, command, parsed) -> {
            terminal.progressDone();
            if (failure instanceof IOException || failure instanceof UncheckedIOException) {
                terminal.err().println("fieldfold: " + sentence(failure));
                return UNREADABLE;
            }
            if (failure instanceof Editions.Refused) {
                terminal.err().println("fieldfold: " + failure.getMessage());
                return REFUSED;
            }
            if (isOutOfMemory(failure)) {
                return outOfMemory(terminal);
            }
            throw failure;
        });
        try {
            return line.execute(args);
        } catch (OutOfMemoryError full) {
            terminal.progressDone();
            return outOfMemory(terminal);
        }
    }

    /** Also on another thread, whose failure is told as that of the whole. */
    private static boolean isOutOfMemory(Throwable failure) {
        return failure != null && (failure instanceof OutOfMemoryError || isOutOfMemory(failure.getCause()));
    }

    private static int outOfMemory(Terminal terminal) {
        terminal.err().println("fieldfold: expected a base that fits into the "
                + (Runtime.getRuntime().maxMemory() >> 20) + " MB that Java may take here, found that it needs more; "
                + "give it more, as in 'java -Xmx4g -jar fieldfold.jar', or split the base. What was published "
                + "before stays as it was");
        return UNREADABLE;
    }

    /** What was expected and found, and where all of it stands; the whole help would push it out of sight. */
    private static int wrongUsage(CommandLine.ParameterException wrong, Terminal terminal) {
        CommandLine command = wrong.getCommandLine();
        String name = command.getCommandSpec().qualifiedName();
        terminal.err().println("fieldfold: " + usage(wrong, name));
        terminal.err().println(command.getUsageMessage(Ansi.OFF).lines().takeWhile(line -> line.startsWith("Usage:")
                || line.startsWith("    ")).collect(Collectors.joining("\n")) + "\n'" + name
                + " --help' says what each means");
        return command.getCommandSpec().exitCodeOnInvalidInput();
    }

    private static String usage(CommandLine.ParameterException wrong, String name) {
        if (wrong instanceof CommandLine.UnmatchedArgumentException unmatched) {
            String near = unmatched.getSuggestions().isEmpty() ? "" : "; did you mean '"
                    + unmatched.getSuggestions().get(0) + "'?";
            String found = unmatched.getUnmatched().get(0);
            return "expected " + (found.startsWith("-") ? "an option of '" + name + "'"
                    : wrong.getCommandLine().getSubcommands().isEmpty() ? "nothing more behind '" + name + "'"
                    : "one of " + String.join(", ", wrong.getCommandLine().getSubcommands().keySet()))
                    + ", found '" + found + "'" + near;
        }
        if (wrong instanceof CommandLine.MissingParameterException missing) {
            return "expected " + missing.getMissing().stream().map(one -> one instanceof OptionSpec option
                    ? option.longestName() + (option.arity().max() > 0 ? " " + option.paramLabel() : "")
                    : one.paramLabel()).collect(Collectors.joining(" and ")) + " behind '" + name + "', found none";
        }
        if (wrong.getArgSpec() != null && wrong.getValue() != null) {
            ArgSpec argument = wrong.getArgSpec();
            String what = argument instanceof OptionSpec option ? " for " + option.longestName() : "";
            return "expected " + argument.description()[0].replaceAll("( \\(default: |;).*", "") + what + ", found '"
                    + wrong.getValue() + "'";
        }
        return wrong.getMessage();
    }

    private static String sentence(Exception failure) {
        Throwable cause = failure instanceof UncheckedIOException ? failure.getCause() : failure;
        if (cause instanceof java.nio.file.NoSuchFileException missing) {
            return "expected a file or folder at " + missing.getFile() + ", found nothing there";
        }
        if (cause instanceof java.nio.file.NotDirectoryException missing) {
            return "expected a folder at " + missing.getFile() + ", found none";
        }
        if (cause instanceof java.nio.file.AccessDeniedException denied) {
            return "no permission for " + denied.getFile();
        }
        return cause.getMessage() == null ? cause.toString() : cause.getMessage();
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    /** Makes commands that need the terminal. */
    private record TerminalFactory(Terminal terminal) implements CommandLine.IFactory {
        @Override
        public <K> K create(Class<K> type) throws Exception {
            try {
                return type.getDeclaredConstructor(Terminal.class).newInstance(terminal);
            } catch (NoSuchMethodException plain) {
                return CommandLine.defaultFactory().create(type);
            }
        }
    }
}
