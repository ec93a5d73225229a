package org.fieldfold.content;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The readings of a content base from one load to the next: a file whose bytes are those of last time, by
 * their hash, is not read again. What files have to do with each other is worked out anew at every load.
 */
public final class KeptReadings {
    private Map<String, FileReading> last = Map.of();
    private int understood;

    /**
     * The same as {@link BaseLoader#load}, in less time.
     *
     * @throws IOException when the folder itself is not there or cannot be listed
     */
    public synchronized LoadedBase load(Path folder) throws IOException {
        Map<String, FileReading> before = last;
        Map<String, FileReading> now = new ConcurrentHashMap<>();
        LoadedBase loaded = BaseLoader.load(folder, file -> FileReading.read(file, (same, bytes) ->
                now.computeIfAbsent(same.path(), path -> reading(before.get(path), same, bytes))));
        understood = (int) now.values().stream().filter(reading -> before.get(reading.file().path()) != reading)
                .count();
        last = now;
        return loaded;
    }

    /** How many files the last load read anew. */
    public synchronized int understood() {
        return understood;
    }

    private static FileReading reading(FileReading before, ContentFile file, byte[] bytes) {
        return before != null && before.file().equals(file)
                && before.input().sha256().equals(FileReading.sha256(bytes)) ? before
                : FileReading.of(file, bytes);
    }
}
