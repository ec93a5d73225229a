package org.fieldfold.cli;

import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.fieldfold.Preview;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code preview}: a page on this machine that follows the files. */
@Command(name = "preview", mixinStandardHelpOptions = true,
        description = "Shows an entry on a page in the browser: its pocket panel, its page of the handbook and "
                + "its findings, made again after every save. Only this machine can open it.")
final class PreviewCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private BaseOptions base;

    @Option(names = "--port", paramLabel = "N", defaultValue = "8027",
            description = "where it listens; 0 for any port that is free (default: ${DEFAULT-VALUE})")
    private int port;

    PreviewCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        terminal.progress("reading " + base.content);
        Preview preview = Preview.open(base.content, base.asOf, port, terminal.err()::println);
        terminal.progressDone();
        Runtime.getRuntime().addShutdownHook(new Thread(preview::close, "preview-end"));
        terminal.out().println("open " + preview.address() + " in a browser on this machine; Ctrl-C ends it");
        new CountDownLatch(1).await();
        return 0;
    }
}
