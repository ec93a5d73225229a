package org.fieldfold;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A part of the demo base in both languages: one guide of two entries, one office with a note of its own. */
final class SmallBase {
    private static final Path DEMO = Path.of("content");
    private static final List<String> WHOLE = List.of("edition.yaml", "crops.yaml", "active-ingredients.yaml",
            "sources.yaml", "prices.yaml", "glossary.yaml");
    private static final List<String> PART = List.of("leek-moth", "onion-maggot", "onion-family", "tarnfield",
            "lowbridge.csv", "row-cover", "rotation", "insect-net", "timing", "green-lacewing",
            "minute-pirate-bug");

    private SmallBase() {
    }

    /** Lays it in a folder, which must not be there yet. */
    static void lay(Path content) throws IOException {
        FolderCopy.of(DEMO, content, SmallBase::isPart);
        for (String file : List.of("edition.yaml", "guides/onion-family.yaml")) {
            Path both = content.resolve(file);
            Files.writeString(both, Files.readString(both).replace("papers: [letter, a4]", "papers: [letter]")
                    .replace("entries: [onion-thrips, ", "entries: ["));
        }
    }

    private static boolean isPart(Path file) {
        String name = file.getFileName().toString();
        return WHOLE.contains(name) || PART.stream().anyMatch(name::startsWith);
    }
}
