package org.fieldfold.translation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fieldfold.FolderCopy;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.content.Draft;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.entry.ContentBase;

/** The small base that rules are tried on, in English and Spanish, in a folder of its own. */
record SampleBase(Path folder) {
    private static final Path SAMPLE = Path.of("src/test/resources/org/fieldfold/check/base");

    static SampleBase in(Path folder) throws IOException {
        FolderCopy.of(SAMPLE, folder);
        SampleBase base = new SampleBase(folder);
        base.change("edition.yaml", "languages: [en]", "languages: [en, es]");
        return base;
    }

    void change(String file, String from, String to) throws IOException {
        String text = Files.readString(folder.resolve(file));
        if (!text.contains(from)) {
            throw new AssertionError("expected '" + from + "' in " + file + ", found " + text);
        }
        Files.writeString(folder.resolve(file), text.replace(from, to));
    }

    ContentBase load() throws IOException {
        LoadedBase loaded = BaseLoader.load(folder);
        if (!loaded.findings().isEmpty()) {
            throw new AssertionError(loaded.findings().toString());
        }
        return loaded.base().orElseThrow();
    }

    /** Brings the working files of a translator up to date, as the command does. */
    List<Draft> draft() throws IOException {
        List<Draft> drafts = Draft.translations(load(), "es", java.util.Optional.empty(),
                hash -> java.util.Optional.empty());
        for (Draft draft : drafts) {
            Path file = folder.resolve(draft.path());
            Files.createDirectories(file.getParent());
            Files.writeString(file, draft.text());
        }
        return drafts;
    }

    String read(String file) throws IOException {
        return Files.readString(folder.resolve(file));
    }

    /** Writes a translation behind the path of a text whose working file is there. */
    void translate(String file, String path, String words) throws IOException {
        String text = read("es/" + file);
        int at = text.indexOf("\n" + path + ":\n");
        if (at < 0) {
            throw new AssertionError("expected the path '" + path + "' in " + text);
        }
        int of = text.indexOf("\n  text:", at) + "\n  text:".length();
        Files.writeString(folder.resolve("es/" + file), text.substring(0, of) + " " + words
                + text.substring(text.indexOf('\n', of)));
    }
}
