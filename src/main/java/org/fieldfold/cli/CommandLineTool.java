package org.fieldfold.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import org.fieldfold.Compiler;
import org.fieldfold.Editions;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
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
            throw failure;
        });
        return line.execute(args);
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
