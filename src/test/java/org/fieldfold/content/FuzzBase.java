package org.fieldfold.content;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.fieldfold.FolderCopy;
import org.fieldfold.entry.ContentBase;

/** The base into which tables are imported: the small one of the rules, and two of its files in a second language. */
final class FuzzBase {
    static final String LANGUAGE = "es";
    private static final Path FOLDER = copy();
    private static final ContentBase CONTENT = load(FOLDER);

    private FuzzBase() {
    }

    static Path folder() {
        return FOLDER;
    }

    static ContentBase content() {
        return CONTENT;
    }

    /** Whether texts may link to it. */
    static boolean isEntry(String id) {
        return Stream.of(CONTENT.pests(), CONTENT.enemies(), CONTENT.practices(), CONTENT.chapters())
                .anyMatch(entries -> entries.containsKey(id));
    }

    private static ContentBase load(Path folder) {
        try {
            return BaseLoader.load(folder).base().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path copy() {
        try {
            Path copy = FolderCopy.of(FuzzTarget.BASE, Files.createTempDirectory("fuzz-base"));
            try (Stream<Path> files = Files.walk(copy)) {
                files.forEach(file -> file.toFile().deleteOnExit());
            }
            for (String file : new String[] {"practices/row-cover", "pests/squash-beetle"}) {
                for (Draft draft : Draft.translations(load(copy), LANGUAGE, Optional.of(file),
                        hash -> Optional.empty())) {
                    Path to = copy.resolve(draft.path());
                    Files.createDirectories(to.getParent());
                    Files.writeString(to, draft.text(), StandardCharsets.UTF_8);
                    to.toFile().deleteOnExit();
                }
            }
            return copy;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
