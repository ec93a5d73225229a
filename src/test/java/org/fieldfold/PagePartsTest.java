package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.content.InputFile;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.kept.Kept;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.output.Publication;
import org.fieldfold.report.Sha256;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files and texts that are made of one entry, from build to build. */
class PagePartsTest {
    private static final String FILE = "pages/leek-moth.txt";

    @TempDir
    private Path folder;
    private Path content;
    private Publication last = new Publication(List.of());
    private int made;
    private int told;

    @BeforeEach
    void lay() throws IOException {
        content = folder.resolve("content");
        SmallBase.lay(content);
    }

    /** Builds; the file's text as it then stands there. */
    private String build(String of) throws IOException {
        LoadedBase loaded = BaseLoader.load(content);
        Tongues tongues = new Tongues(loaded.base().orElseThrow());
        Kept kept = Kept.in(folder.resolve("kept"), "program");
        try (OutputFolder out = OutputFolder.open(folder.resolve("out"), "2027")) {
            out.follow(last);
            PageParts parts = new PageParts(new EarlierPages(content, kept, InputFile.hashes(loaded.inputs())), tongues,
                    out);
            for (String language : tongues.languages()) {
                assertEquals(List.of(names(tongues.in(language))), parts.texts(language + " names", language, read -> {
                    told++;
                    return List.of(names(read));
                }));
            }
            parts.files("page", of, tongues.languages().get(0), read -> {
                made++;
                return Map.of(FILE, (of + names(read)).getBytes(StandardCharsets.UTF_8));
            });
            parts.leave();
            out.publish();
            last = out.published();
        }
        return Files.readString(folder.resolve("out/2027").resolve(FILE));
    }

    private static String names(ContentBase base) {
        return base.pests().get("leek-moth").value().names().common();
    }

    private void edit(String file, String was, String is) throws IOException {
        String text = Files.readString(content.resolve(file));
        assertTrue(text.contains(was), was + " in " + file);
        Files.writeString(content.resolve(file), text.replace(was, is));
    }

    @Test
    void aFileStaysUntilSomethingThatWasReadForItHasChanged() throws IOException {
        String first = build("");
        assertEquals(1, made);
        edit("offices/tarnfield.yaml", "555-0122", "555-0123");
        assertEquals(first, build(""));
        assertEquals(1, made);
        edit("pests/leek-moth.yaml", "common: ", "common: small ");
        assertEquals("small " + first, build(""));
        assertEquals(2, made);
        assertEquals("PROOF small " + first, build("PROOF "));
        assertEquals(3, made);
        assertEquals(last.files().get(0).sha256(), Sha256.of(
                ("PROOF small " + first).getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void aFileThatWasChangedOrDeletedInTheLastBuildIsMadeAgain() throws IOException {
        String first = build("");
        Path file = folder.resolve("out/2027").resolve(FILE);
        Files.writeString(file, "by hand");
        assertEquals(first, build(""));
        Files.delete(file);
        assertEquals(first, build(""));
        last = new Publication(List.of());
        assertEquals(first, build(""), "nobody knows what was published");
        assertEquals(4, made);
    }

    @Test
    void textsAreFoundOutAgainWhereTheirTranslationHasChanged() throws IOException {
        build("");
        int languages = told;
        assertTrue(languages > 1, "languages: " + languages);
        build("");
        edit("offices/tarnfield.yaml", "555-0122", "555-0123");
        build("");
        assertEquals(languages, told);
        Files.writeString(content.resolve("es/pests/leek-moth.yaml"), "# a line more\n", StandardOpenOption.APPEND);
        build("");
        assertEquals(languages + 1, told, "in that language");
    }
}
