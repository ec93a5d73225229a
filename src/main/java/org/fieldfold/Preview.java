package org.fieldfold;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.preview.FolderWatch;
import org.fieldfold.preview.PreviewServer;

/** A page on this machine that shows an entry as it will stand, and again after every save. */
public final class Preview implements AutoCloseable {
    private final PreviewDesk desk;
    private final PreviewServer server;
    private final FolderWatch watch;
    private final Consumer<String> trouble;
    private final Consumer<String> steps;
    private volatile long told;

    private Preview(Path content, PreviewDesk desk, int port, Consumer<String> trouble, Consumer<String> steps)
            throws IOException {
        this.desk = desk;
        this.trouble = trouble;
        this.steps = steps;
        this.told = desk.renew();
        this.server = PreviewServer.open(port, desk);
        this.watch = FolderWatch.of(content, this::renew);
    }

    /**
     * Reads a content base, begins to serve it and to follow it.
     *
     * @param asOf what staleness is measured against; empty for the edition's planned issue date
     * @param port 0 for any that is free
     * @param trouble is told in a line why a save could not be followed
     * @throws IOException when the folder cannot be read, or the port is taken
     */
    public static Preview open(Path content, Optional<LocalDate> asOf, int port, Consumer<String> trouble)
            throws IOException {
        return open(content, asOf, port, trouble, step -> { });
    }

    /** @param steps is told of every step of a renewal when it is done, on the thread that takes it */
    static Preview open(Path content, Optional<LocalDate> asOf, int port, Consumer<String> trouble,
            Consumer<String> steps) throws IOException {
        return new Preview(content, new PreviewDesk(content, asOf, steps), port, trouble, steps);
    }

    /** Where a browser on this machine finds it. */
    public String address() {
        return "http://127.0.0.1:" + server.port() + "/";
    }

    @Override
    public void close() {
        watch.close();
        server.close();
    }

    /** The preview outlives whatever a half-written file leads to: the next save is followed again. */
    private void renew() {
        steps.accept("notice");
        try {
            long version = desk.renew();
            if (version > told) {
                desk.prepare(server.subjects());
                server.tell(version);
                told = version;
            }
        } catch (IOException | RuntimeException failed) {
            trouble.accept("could not follow the last save: " + failed);
        }
    }
}
