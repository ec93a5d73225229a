package org.fieldfold.handbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.translation.TranslatedBase;

/** The shipped base and its handbook, written once for all tests. */
final class Shipped {
    static final ContentBase BASE = load();
    static final Phrases PHRASES = Phrases.in("en");
    static final List<HandbookFile> FILES = Handbook.write(BASE, PHRASES, false);
    static final List<HandbookFile> SPANISH =
            Handbook.write(TranslatedBase.in(BASE, "es"), Phrases.in("es"), false);

    private Shipped() {
    }

    private static ContentBase load() {
        try {
            return BaseLoader.load(Path.of("content")).base().orElseThrow();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static void write(Path folder, List<HandbookFile> files) throws IOException {
        for (HandbookFile file : files) {
            Path path = folder.resolve(file.path());
            Files.createDirectories(path.getParent());
            Files.write(path, file.bytes());
        }
    }

    static HandbookFile oneFile() {
        return FILES.get(0);
    }

    static List<HandbookFile> pages(List<HandbookFile> files) {
        return files.stream().filter(file -> file.path().endsWith(".html")).toList();
    }

    static List<HandbookFile> folderPages(List<HandbookFile> files) {
        return pages(files).stream().filter(file -> file.path().startsWith("handbook/")).toList();
    }
}
