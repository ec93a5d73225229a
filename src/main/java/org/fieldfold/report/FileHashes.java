package org.fieldfold.report;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * SHA-256 of files that are read more than once: one that is found again with the same length and
 * {@link Checksums} is not hashed again, which takes about a hundred times as long. That is proof against chance,
 * not against somebody who forges a file to be taken for what it was. Several threads may use it.
 */
public final class FileHashes {
    private final Map<String, Hashed> before = new ConcurrentHashMap<>();
    private final Map<String, Hashed> now = new ConcurrentHashMap<>();

    private record Hashed(int length, long check, String sha256) {
        boolean isOf(int size, long sum) {
            return length == size && check == sum;
        }
    }

    /** None are known yet. */
    public FileHashes() {
    }

    /**
     * Those that an earlier process wrote down.
     *
     * @param written {@link #bytes}; of anything else nothing is known
     */
    public FileHashes(byte[] written) {
        for (String line : new String(written, StandardCharsets.UTF_8).split("\n")) {
            String[] parts = line.split(" ", 4);
            try {
                before.put(parts[3], new Hashed(Integer.parseInt(parts[0]), Long.parseLong(parts[1]), parts[2]));
            } catch (NumberFormatException | ArrayIndexOutOfBoundsException otherForm) {
                before.clear();
                return;
            }
        }
    }

    /**
     * The hash of what was read from a file just now.
     *
     * @param file always spelt alike
     */
    public String of(Path file, byte[] bytes) {
        String name = file.toString();
        long check = Checksums.of(bytes);
        Hashed hashed = now.getOrDefault(name, before.get(name));
        if (hashed == null || !hashed.isOf(bytes.length, check)) {
            hashed = new Hashed(bytes.length, check, Sha256.of(bytes));
        }
        now.put(name, hashed);
        return hashed.sha256();
    }

    /** Those that were asked for, to be known in a later process; empty when they are as they were written down. */
    public Optional<byte[]> bytes() {
        if (now.equals(before)) {
            return Optional.empty();
        }
        SortedMap<String, Hashed> lines = new TreeMap<>(now);
        // a name of several lines is hashed every time
        lines.keySet().removeIf(name -> name.indexOf('\n') >= 0);
        StringBuilder out = new StringBuilder();
        lines.forEach((name, hashed) -> out.append(hashed.length()).append(' ').append(hashed.check()).append(' ')
                .append(hashed.sha256()).append(' ').append(name).append('\n'));
        return Optional.of(out.toString().getBytes(StandardCharsets.UTF_8));
    }
}
