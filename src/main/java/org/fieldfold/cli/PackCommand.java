package org.fieldfold.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import org.fieldfold.OfficeChoice;
import org.fieldfold.Packs;
import org.fieldfold.source.Finding;
import org.fieldfold.source.FindingPrinter;
import org.fieldfold.source.FindingText;
import org.fieldfold.source.Severity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code pack}: for every county office a folder of all that it prints. */
@Command(name = "pack", mixinStandardHelpOptions = true,
        description = "Makes for every office its sheets with its own panel, its calendars, the sheet to print "
            + "first, a page for its counter, and all of it in one file. Packs that are there already, made from "
            + "the same content, are kept: a run that was stopped goes on where it was.")
final class PackCommand implements Callable<Integer> {
    private static final double TENTH = 0.1;

    private final Terminal terminal;
    private final AtomicBoolean stop = new AtomicBoolean();
    private long begun;
    private long first;
    private int madeFirst;
    private int told;

    @Spec
    private CommandSpec spec;

    @Mixin
    private BaseOptions base;

    @Option(names = "--out", paramLabel = "DIR", defaultValue = "build-output",
            description = "where to; packs are in DIR/packs-YEAR (default: ${DEFAULT-VALUE})")
    private Path out;

    @Option(names = "--proof", description = "pack although errors stand, with PROOF on every page")
    private boolean proof;

    @Option(names = "--offices", paramLabel = "A..M", defaultValue = "..",
            description = "only offices from A to M, those that begin with M as well; or one office")
    private String offices;

    @Option(names = "--slice", paramLabel = "3/8", defaultValue = "1/1",
            description = "only the third of eight parts of them, as for eight machines")
    private String slice;

    @Option(names = "--again", description = "make packs anew that are there already")
    private boolean again;

    PackCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        OfficeChoice which = choice();
        CountDownLatch ended = new CountDownLatch(1);
        Thread interrupted = new Thread(() -> {
            stop.set(true);
            try {
                ended.await();
            } catch (InterruptedException cut) {
                Thread.currentThread().interrupt();
            }
        });
        Runtime.getRuntime().addShutdownHook(interrupted);
        try {
            begun = terminal.nanos().getAsLong();
            terminal.progress("reading " + base.content);
            Packs.Packed packed = Packs.pack(new Packs.Request(base.content, out, base.asOf, proof, which, again),
                    this::tell, stop::get);
            terminal.progressDone();
            return say(packed);
        } finally {
            ended.countDown();
            forget(interrupted);
        }
    }

    private OfficeChoice choice() {
        try {
            return OfficeChoice.of(offices, slice);
        } catch (IllegalArgumentException wrong) {
            throw new ParameterException(spec.commandLine(), wrong.getMessage());
        }
    }

    /** Not while the machine is ending already. */
    private void forget(Thread hook) {
        if (!stop.get()) {
            Runtime.getRuntime().removeShutdownHook(hook);
        }
    }

    /** To a person always, to a file of notes at every tenth. */
    private synchronized void tell(int done, int made, int of) {
        long now = terminal.nanos().getAsLong();
        if (first == 0) {
            first = now;
            madeFirst = made;
        }
        // what was there already took no time, nor did the setting of guides that comes before
        double each = (now - first) / 1e9 / Math.max(1, made - madeFirst);
        String left = String.format(Locale.ROOT, "%d of %d offices, %d made, about %.0f s left", done, of, made,
                each * (of - done));
        if (terminal.interactive()) {
            terminal.progress(left);
        } else if ((int) (done / (of * TENTH)) > told) {
            told = (int) (done / (of * TENTH));
            terminal.err().println(left);
        }
    }

    private int say(Packs.Packed packed) {
        if (packed.unchanged()) {
            terminal.out().printf(Locale.ROOT, "nothing has changed since %d packs were made in %s%n", packed.kept(),
                    packed.folder().get());
            return 0;
        }
        List<Finding> told = packed.findings().stream()
                .filter(finding -> finding.severity() != Severity.INFO).toList();
        terminal.err().print(new FindingText(terminal.interactive()).told(told) + FindingText.places(told));
        terminal.err().println(FindingPrinter.summary(packed.findings()));
        if (packed.folder().isEmpty()) {
            terminal.err().println("no pack was made; mend the errors, or make marked ones with --proof");
            return 1;
        }
        double seconds = (terminal.nanos().getAsLong() - begun) / 1e9;
        terminal.out().printf(Locale.ROOT, "%d packs in %s, %d kept, %d sheets, %.1f s%n", packed.made(),
                packed.folder().get(), packed.kept(), packed.sheets(), seconds);
        if (packed.left() > 0) {
            terminal.err().println(packed.left() + (stop.get() ? " packs are not made yet: the same command "
                    + "goes on" : " packs were not made because of errors"));
        }
        return packed.left() > 0 || packed.findings().stream()
                .anyMatch(finding -> finding.severity() == Severity.ERROR) ? 1 : 0;
    }
}
