package org.fieldfold.kept;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import org.fieldfold.report.Checksums;

/**
 * A folder of kept results: large ones each in a file, small ones in one together. Each stands behind a check of
 * itself and of its name. A file appears whole or not at all; what is damaged counts as absent. Whatever goes
 * wrong with it only costs time, so nothing here fails: any number of processes may use one folder, and anybody
 * may delete it at any time.
 */
final class Store {
    private static final int CHECK = Long.BYTES;
    private static final Pattern RESULT = Pattern.compile("[0-9a-f]{64}");
    private static final Pattern LIST = Pattern.compile("build-([0-9]{1,9})");

    private static final String SMALL = "small";

    private final Path folder;
    private Optional<Bundle> small = Optional.empty();
    private final AtomicInteger unfinished = new AtomicInteger();

    Store(Path folder) {
        this.folder = folder;
    }

    Optional<byte[]> get(String name) {
        try {
            byte[] bytes = Files.readAllBytes(folder.resolve(name));
            if (bytes.length < CHECK) {
                return Optional.empty();
            }
            byte[] result = Arrays.copyOfRange(bytes, CHECK, bytes.length);
            return ByteBuffer.wrap(bytes).getLong() == check(name, result) ? Optional.of(result)
                    : Optional.empty();
        } catch (IOException | SecurityException absent) {
            return Optional.empty();
        }
    }

    void put(String name, byte[] result) {
        try {
            write(name, ByteBuffer.allocate(CHECK + result.length).putLong(check(name, result)).put(result)
                    .array());
        } catch (IOException | SecurityException unkept) {
            // it is made again next time
        }
    }

    Optional<byte[]> getSmall(String name) {
        return small().get(name);
    }

    /** It is written by {@link #save} or {@link #keepOnly}. */
    void putSmall(String name, byte[] result) {
        small().put(name, result);
    }

    private synchronized Bundle small() {
        if (small.isEmpty()) {
            byte[] bytes = {};
            try {
                bytes = Files.readAllBytes(folder.resolve(SMALL));
            } catch (IOException | SecurityException absent) {
                // all of it is made again
            }
            small = Optional.of(new Bundle(bytes));
        }
        return small.get();
    }

    /** Writes the small results that are new. */
    void save() {
        try {
            if (small().isChanged()) {
                write(SMALL, small()::write);
            }
        } catch (IOException | SecurityException unkept) {
            // they are made again next time
        }
    }

    private static long check(String name, byte[] result) {
        return Checksums.of(name.getBytes(StandardCharsets.US_ASCII), result);
    }

    private void write(String name, byte[] bytes) throws IOException {
        write(name, file -> file.write(bytes));
    }

    /** Writes a file. */
    private interface Writing {
        void to(OutputStream file) throws IOException;
    }

    private void write(String name, Writing writing) throws IOException {
        Files.createDirectories(folder);
        Path whole = folder.resolve(name + "." + ProcessHandle.current().pid() + "-"
                + unfinished.incrementAndGet() + ".part");
        try {
            try (OutputStream file = new BufferedOutputStream(Files.newOutputStream(whole))) {
                writing.to(file);
            }
            Files.move(whole, folder.resolve(name), StandardCopyOption.ATOMIC_MOVE,
                    StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(whole);
        }
    }

    /**
     * Writes down what a build used, and drops what neither it nor the last ones before it did.
     *
     * @param builds how many builds are remembered, this one included
     */
    void keepOnly(Collection<String> used, int builds) {
        try {
            Files.createDirectories(folder);
            List<Integer> numbers = new ArrayList<>(new TreeSet<>(numbers()));
            int next = numbers.isEmpty() ? 1 : numbers.get(numbers.size() - 1) % 999_999_998 + 1;
            write("build-" + next, String.join("\n", new TreeSet<>(used))
                    .getBytes(StandardCharsets.US_ASCII));
            numbers.add(next);
            Set<String> wanted = new HashSet<>(used);
            for (int number : numbers.subList(Math.max(0, numbers.size() - builds), numbers.size())) {
                wanted.add("build-" + number);
                wanted.addAll(Files.readAllLines(folder.resolve("build-" + number)));
            }
            small().keepOnly(wanted);
            save();
            for (Path file : files()) {
                if (!wanted.contains(file.getFileName().toString())
                        && isOurs(file.getFileName().toString())) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (IOException | DirectoryIteratorException | SecurityException undropped) {
            // the next build drops it
        }
    }

    private static boolean isOurs(String name) {
        return RESULT.matcher(name).matches() || LIST.matcher(name).matches() || name.endsWith(".part");
    }

    private List<Integer> numbers() throws IOException {
        return files().stream().map(file -> LIST.matcher(file.getFileName().toString()))
                .filter(java.util.regex.Matcher::matches).map(list -> Integer.parseInt(list.group(1)))
                .toList();
    }

    private List<Path> files() throws IOException {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            all.forEach(files::add);
        }
        return files;
    }
}
