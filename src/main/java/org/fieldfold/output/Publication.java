package org.fieldfold.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All files of a build that was published, its manifest among them. */
public record Publication(List<Published> files) {
    public Publication {
        files = List.copyOf(files);
    }

    /**
     * Whether it stands in {@code parent/name} as it was published: with these files and no others, each as it
     * was written, and with nothing left beside it by a build that was cut off.
     */
    public boolean stands(Path parent, String name) {
        Path build = parent.resolve(name);
        Set<Path> expected = files.stream().map(file -> build.resolve(file.path())).collect(Collectors.toSet());
        Set<Path> folders = new HashSet<>(Set.of(build));
        for (Path file : expected) {
            Path at = file.getParent();
            while (folders.add(at)) {
                at = at.getParent();
            }
        }
        try (Stream<Path> found = Files.walk(build)) {
            return !Files.exists(OutputFolder.staging(build)) && !Files.exists(OutputFolder.former(build))
                    && found.allMatch(path -> Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)
                            ? folders.contains(path) : expected.contains(path))
                    && files.parallelStream().allMatch(file -> file.in(build).isPresent());
        } catch (IOException | UncheckedIOException | SecurityException unread) {
            return false;
        }
    }
}
