package org.fieldfold.content;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.fieldfold.report.FileHashes;
import org.fieldfold.source.SourceFile;

/**
 * The readings of a content base from one load to the next, and from one process to the next: a file whose
 * path and bytes are those of last time, the bytes by their hash, is not read again. What files have to do
 * with each other is worked out anew at every load.
 */
public final class KeptReadings {
    /** A hash, and numbers of a few bytes each. */
    private static final int ENTRY = 80;
    private static final int MOST_ROOM = 1 << 30;

    private Map<String, FileReading> last = Map.of();
    /** What they were read from: to compare bytes is quicker than to hash them. */
    private Map<String, byte[]> lastBytes = Map.of();
    private final Map<String, WrittenReading> written = new HashMap<>();
    private int understood;

    /** None are known yet. */
    public KeptReadings() {
    }

    /**
     * Those that an earlier process wrote down.
     *
     * @param bytes of {@link #bytes} by the very same program; of any others nothing is known
     */
    public KeptReadings(byte[] bytes) {
        try {
            TreeReader in = new TreeReader(new SourceFile("", ""), bytes, 0, bytes.length);
            for (int left = in.number(); left > 0; left--) {
                String path = in.text();
                String sha256 = in.text();
                int length = in.number();
                int from = in.position();
                in.skip(length);
                written.put(path, new WrittenReading(sha256, bytes, from, length));
            }
        } catch (RuntimeException otherBytes) {
            written.clear();
        }
    }

    /**
     * The same as {@link BaseLoader#load}, in less time.
     *
     * @throws IOException when the folder itself is not there or cannot be listed
     */
    public synchronized LoadedBase load(Path folder) throws IOException {
        return load(folder, new FileHashes());
    }

    /** @param hashes of files that were looked at before */
    public synchronized LoadedBase load(Path folder, FileHashes hashes) throws IOException {
        Map<String, FileReading> before = last;
        Map<String, FileReading> now = new ConcurrentHashMap<>();
        Map<String, byte[]> bytesNow = new ConcurrentHashMap<>();
        Map<String, Boolean> anew = new ConcurrentHashMap<>();
        LoadedBase loaded = BaseLoader.load(folder, file -> FileReading.read(file, (same, bytes) ->
                now.computeIfAbsent(same.path(), path -> {
                    bytesNow.put(path, bytes);
                    FileReading known = before.get(path);
                    if (known != null && known.file().equals(same)
                            && Arrays.equals(bytes, lastBytes.get(path))) {
                        return known;
                    }
                    String sha256 = hashes.of(same.file(), bytes);
                    return written(same, bytes, sha256).orElseGet(() -> {
                        anew.put(path, true);
                        return FileReading.of(same, bytes, sha256);
                    });
                })));
        understood = anew.size();
        last = now;
        lastBytes = bytesNow;
        return loaded;
    }

    /** How many files the last load read anew. */
    public synchronized int understood() {
        return understood;
    }

    private Optional<FileReading> written(ContentFile file, byte[] bytes, String sha256) {
        return Optional.ofNullable(written.get(file.path())).filter(kept -> kept.sha256().equals(sha256))
                .flatMap(kept -> kept.read(file, FileReading.input(file, bytes, sha256),
                        FileReading.source(file, bytes, new FewFindings()), FileReading.image(file, bytes)));
    }

    /** Whether the last load came to the very readings that an earlier process wrote down. */
    public synchronized boolean isAsWritten() {
        return understood == 0 && written.keySet().equals(last.keySet());
    }

    /** The readings of the last load, to be known in a later process. */
    public synchronized byte[] bytes() {
        Map<String, WrittenReading> all = new TreeMap<>();
        last.forEach((path, reading) -> {
            WrittenReading known = written.get(path);
            Optional<WrittenReading> same = known != null
                    && known.sha256().equals(reading.input().sha256()) ? Optional.of(known)
                            : WrittenReading.of(reading);
            same.ifPresent(one -> all.put(path, one));
        });
        // of a large base it is large, and not to be held twice while it grows
        long room = all.entrySet().stream().mapToLong(each -> each.getKey().length() + each.getValue().length()
                + ENTRY).sum();
        TreeWriter out = new TreeWriter(new SourceFile("", ""), (int) Math.min(room, MOST_ROOM));
        try {
            out.number(all.size());
            for (Map.Entry<String, WrittenReading> each : all.entrySet()) {
                out.text(each.getKey());
                out.text(each.getValue().sha256());
                out.raw(each.getValue().bytes(), each.getValue().from(), each.getValue().length());
            }
            return out.bytes();
        } catch (TreeWriter.Formless path) {
            return new byte[0];
        }
    }
}
