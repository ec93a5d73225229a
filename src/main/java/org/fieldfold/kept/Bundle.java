package org.fieldfold.kept;

import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import org.fieldfold.report.Checksums;

/**
 * Many small results in one file, which is read at once: to open a file costs more than to read a page. Each has
 * its own check, so that damage spoils what it hits and no more. Several threads may use it.
 */
final class Bundle {
    private static final int NAME = 64;
    private static final int HEAD = NAME + Integer.BYTES + Long.BYTES;

    /** All results are in memory while a build runs: the pages of some 600 entries. What comes behind is not kept. */
    private static final long MOST = 64L << 20;

    private final Map<String, ByteBuffer> results = new ConcurrentHashMap<>();
    private final AtomicLong held = new AtomicLong();
    private volatile boolean changed;

    /** @param bytes of its file; empty where there is none */
    Bundle(byte[] bytes) {
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        byte[] name = new byte[NAME];
        while (rest.remaining() >= HEAD) {
            rest.get(name);
            int length = rest.getInt();
            long check = rest.getLong();
            if (length < 0 || length > rest.remaining()) {
                // the length itself was hit: nobody knows where the next one begins
                changed = true;
                return;
            }
            ByteBuffer result = rest.slice().limit(length);
            rest.position(rest.position() + length);
            if (Checksums.of(ByteBuffer.wrap(name), result.duplicate()) == check) {
                results.put(new String(name, StandardCharsets.US_ASCII), result.slice());
                held.addAndGet(length);
            } else {
                changed = true;
            }
        }
    }

    Optional<byte[]> get(String name) {
        return Optional.ofNullable(results.get(name)).map(result -> {
            byte[] bytes = new byte[result.remaining()];
            result.duplicate().get(bytes);
            return bytes;
        });
    }

    void put(String name, byte[] result) {
        if (held.addAndGet(result.length) > MOST) {
            held.addAndGet(-result.length);
            return;
        }
        ByteBuffer before = results.put(name, ByteBuffer.wrap(result));
        held.addAndGet(before == null ? 0 : -before.remaining());
        changed = true;
    }

    /** Drops all others. */
    void keepOnly(Set<String> wanted) {
        changed |= results.keySet().retainAll(wanted);
        held.set(results.values().stream().mapToLong(ByteBuffer::remaining).sum());
    }

    /** Whether it is no longer what was read. */
    boolean isChanged() {
        return changed;
    }

    /** Writes its file, one result after the other: all of them at once would be twice in memory. */
    void write(OutputStream file) throws IOException {
        DataOutputStream out = new DataOutputStream(file);
        for (Map.Entry<String, ByteBuffer> one : new TreeMap<>(results).entrySet()) {
            byte[] name = one.getKey().getBytes(StandardCharsets.US_ASCII);
            ByteBuffer result = one.getValue();
            out.write(name);
            out.writeInt(result.remaining());
            out.writeLong(Checksums.of(ByteBuffer.wrap(name), result.duplicate()));
            out.write(result.array(), result.arrayOffset() + result.position(), result.remaining());
        }
        out.flush();
        changed = false;
    }
}
