package org.fieldfold;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fieldfold.content.InputFile;
import org.fieldfold.report.FileHashes;
import org.fieldfold.report.Sha256;

/**
 * All that lies in the folder of a content base, read or not: something may be said of any of it.
 *
 * @param hashes of files, by path in the base
 * @param others folders, where links lead, and what is no file, by path in the base
 */
record ContentFiles(SortedMap<String, String> hashes, SortedMap<String, String> others) {
    /** @param known hashes, which gain those of all files here */
    static ContentFiles in(Path content, FileHashes known) throws IOException {
        List<Path> found;
        try (Stream<Path> all = Files.walk(content)) {
            found = all.toList();
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
        SortedMap<String, String> others = new TreeMap<>();
        for (Path path : found) {
            if (Files.isSymbolicLink(path)) {
                others.put(name(content, path), "link to " + Files.readSymbolicLink(path));
            } else if (!Files.isRegularFile(path)) {
                others.put(name(content, path), Files.isDirectory(path) ? "folder" : "no file");
            }
        }
        SortedMap<String, String> hashes = new ConcurrentSkipListMap<>();
        try {
            found.parallelStream().filter(Files::isRegularFile).forEach(file ->
                    hashes.put(name(content, file), hash(file, known)));
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
        return new ContentFiles(hashes, others);
    }

    private static String name(Path content, Path path) {
        return content.relativize(path).toString().replace('\\', '/');
    }

    private static String hash(Path file, FileHashes known) {
        try {
            return known.of(file, Files.readAllBytes(file));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** One hash of everything, and of what is asked to be made of it. */
    String key(String asked) {
        return Sha256.of((Compiler.VERSION + " " + asked + " " + hashes + " " + others)
                .getBytes(StandardCharsets.UTF_8));
    }

    List<String> offices() {
        return hashes.keySet().stream().filter(path -> path.matches("offices/[^/]+\\.yaml"))
                .map(path -> path.substring("offices/".length(), path.length() - ".yaml".length())).toList();
    }

    /**
     * Whether the same was read: a file may have been saved, put there or taken away in between.
     *
     * @param content the folder
     */
    boolean holds(List<InputFile> inputs, Path content) {
        Set<String> read = inputs.stream().map(file -> inBase(file.path())).collect(Collectors.toSet());
        return inputs.stream().allMatch(file -> file.sha256().equals(hashes.get(inBase(file.path()))))
                && Stream.concat(hashes.keySet().stream(), others.keySet().stream())
                        .filter(path -> !read.contains(path))
                        .allMatch(path -> Files.exists(content.resolve(path), LinkOption.NOFOLLOW_LINKS));
    }

    private static String inBase(String path) {
        return path.substring(path.indexOf('/') + 1);
    }
}
