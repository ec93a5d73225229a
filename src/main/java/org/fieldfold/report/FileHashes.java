package org.fieldfold.report;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * SHA-256 of files that are read more than once: one that is found again with the same length and
 * {@link Checksums} is not hashed again, which takes about a hundred times as long. Several threads may use it.
 */
public final class FileHashes {
    private final Map<Path, Hashed> known = new ConcurrentHashMap<>();

    private record Hashed(int length, long check, String sha256) {
        boolean isOf(int size, long sum) {
            return length == size && check == sum;
        }
    }

    /**
     * The hash of what was read from a file just now.
     *
     * @param file always spelt alike
     */
    public String of(Path file, byte[] bytes) {
        long check = Checksums.of(bytes);
        Hashed hashed = known.get(file);
        if (hashed == null || !hashed.isOf(bytes.length, check)) {
            hashed = new Hashed(bytes.length, check, Sha256.of(bytes));
            known.put(file, hashed);
        }
        return hashed.sha256();
    }
}
