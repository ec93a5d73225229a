package org.fieldfold.preview;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileSystems;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Says when something in a folder changed, folders in it and new ones included. The system's own watcher only
 * wakes it; what counts is the look of the folder, so that a file that is written beside and renamed is
 * followed like one that is written in place. A burst is told once, when it is over. Where the system does not
 * watch, or loses track, it looks by itself several times a second.
 */
public final class FolderWatch implements AutoCloseable {
    private static final int DEPTH = 6;
    private static final int MOST_FILES = 40_000;
    private static final long QUIET_MILLIS = 25;
    private static final long LONGEST_BURST_MILLIS = 1_000;
    private static final long LOOK_AGAIN_MILLIS = 2_000;
    private static final long POLL_MILLIS = 250;

    private final Path root;
    private final Runnable changed;
    private final Optional<WatchService> service;
    private final Map<Path, WatchKey> watched = new TreeMap<>();
    private final Thread thread;
    private Map<String, Stamp> last = Map.of();
    private volatile boolean open = true;

    /** What a file looks like from outside. */
    private record Stamp(long size, long modified, String key) {
    }

    private FolderWatch(Path root, Optional<WatchService> service, Runnable changed) {
        this.root = root;
        this.service = service;
        this.changed = changed;
        this.thread = new Thread(this::follow, "folder-watch");
        thread.setDaemon(true);
    }

    /**
     * Begins to watch.
     *
     * @param changed is called on the watch's own thread, once a burst; it must not throw
     */
    public static FolderWatch of(Path root, Runnable changed) {
        Optional<WatchService> service;
        try {
            service = Optional.of(FileSystems.getDefault().newWatchService());
        } catch (IOException | UnsupportedOperationException none) {
            service = Optional.empty();
        }
        return start(root, service, changed);
    }

    /** The same without the system's watcher. */
    static FolderWatch polling(Path root, Runnable changed) {
        return start(root, Optional.empty(), changed);
    }

    private static FolderWatch start(Path root, Optional<WatchService> service, Runnable changed) {
        FolderWatch watch = new FolderWatch(root, service, changed);
        watch.last = watch.look();
        watch.thread.start();
        return watch;
    }

    @Override
    public void close() {
        open = false;
        thread.interrupt();
        service.ifPresent(one -> {
            try {
                one.close();
            } catch (IOException gone) {
                throw new UncheckedIOException(gone);
            }
        });
    }

    private void follow() {
        try {
            while (open) {
                boolean woken = pause(watched.isEmpty() ? POLL_MILLIS : LOOK_AGAIN_MILLIS);
                if (woken) {
                    settle();
                }
                Map<String, Stamp> now = look();
                if (open && !now.equals(last)) {
                    last = now;
                    changed.run();
                }
            }
        } catch (InterruptedException | ClosedWatchServiceException closed) {
            open = false;
        }
    }

    /** Until nothing was heard for a moment, but not for ever. */
    private void settle() throws InterruptedException {
        long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(LONGEST_BURST_MILLIS);
        while (pause(QUIET_MILLIS) && System.nanoTime() < until) {
            continue;
        }
    }

    /** Whether something was heard before the time was over. */
    private boolean pause(long millis) throws InterruptedException {
        if (service.isEmpty()) {
            Thread.sleep(millis);
            return false;
        }
        WatchKey key = service.get().poll(millis, TimeUnit.MILLISECONDS);
        if (key == null) {
            return false;
        }
        key.pollEvents();
        if (!key.reset()) {
            watched.values().remove(key);
        }
        return true;
    }

    private Map<String, Stamp> look() {
        Map<String, Stamp> found = new TreeMap<>();
        try (Stream<Path> files = Files.walk(root, DEPTH, new FileVisitOption[0])) {
            files.limit(MOST_FILES).forEach(file -> stamp(file, found));
        } catch (IOException | UncheckedIOException moved) {
            // a folder that went away while it was looked at: the next look sees what became of it
            found.put("", new Stamp(found.size(), 0, "moved"));
        }
        return found;
    }

    private void stamp(Path file, Map<String, Stamp> found) {
        try {
            var facts = Files.readAttributes(file, java.nio.file.attribute.BasicFileAttributes.class);
            if (facts.isDirectory()) {
                watch(file);
            } else {
                found.put(root.relativize(file).toString(), new Stamp(facts.size(),
                        facts.lastModifiedTime().to(TimeUnit.NANOSECONDS), String.valueOf(facts.fileKey())));
            }
        } catch (IOException moved) {
            found.put(root.relativize(file).toString(), new Stamp(-1, 0, "moved"));
        }
    }

    private void watch(Path folder) {
        WatchKey known = watched.get(folder);
        if (service.isEmpty() || known != null && known.isValid()) {
            return;
        }
        try {
            watched.put(folder, folder.register(service.get(), StandardWatchEventKinds.ENTRY_CREATE,
                    StandardWatchEventKinds.ENTRY_DELETE, StandardWatchEventKinds.ENTRY_MODIFY));
        } catch (IOException | ClosedWatchServiceException full) {
            // no watch left to be had: the folder is looked at like the others, only later
            watched.remove(folder);
        }
    }
}
