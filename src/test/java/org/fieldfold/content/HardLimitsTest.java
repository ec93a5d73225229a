package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HardLimitsTest {
    @TempDir
    Path temporary;

    /** A record that refuses some of its values, as those of the model may come to do. */
    record Pair(int from, int to) {
        Pair {
            if (from > to) {
                throw new IllegalArgumentException("from must not be above to, found " + from + " and " + to);
            }
        }
    }

    @Test
    void whatARecordRefusesIsAFinding() {
        List<Finding> findings = new ArrayList<>();
        YamlReading reading = YamlReading.read(new SourceFile("x.yaml", "{from: 3, to: 2}"), findings);
        Binder binder = new Binder(reading, Optional.empty(), findings);
        assertEquals(Optional.empty(), binder.bind(reading.root().orElseThrow(), Shapes.of(Pair.class), ""));
        assertEquals(List.of("x.yaml:1:1: error: expected values that fit together, found: from must not "
                + "be above to, "
                + "found 3 and 2 [bad-value] hint: change one of them"), findings.stream().map(Base::shown)
                        .toList());
    }

    @Test
    void aParagraphWithoutEnd() {
        String text = "Do **not** wait. ".repeat(400);
        assertEquals(List.of("content/chapters/a.md:1:8: error: expected paragraphs of at most 5000 "
                + "characters, found "
                + "one of 6799 [paragraph-too-long] hint: put blank lines between its paragraphs"),
                new Base(temporary).with("chapters/a.md", "# Title\n\n" + text).findings());
    }

    @Test
    void aFileThatIsGoneBeforeItIsRead() {
        ContentFile gone = new ContentFile("content/pests/a.yaml", temporary.resolve("gone"), FileKind.PEST,
                "a");
        assertEquals(List.of("content/pests/a.yaml:1:1: error: expected a file that can be read, found none: "
                + "NoSuchFileException [unreadable-file] hint: look at the file's permissions"),
                FileReading.read(gone).findings().stream().map(Base::shown).toList());
        assertEquals(List.of("a"), List.copyOf(FileReading.read(gone).unread().keySet()));
    }

    @Test
    void aFolderWithTooManyFiles() throws IOException {
        Path weather = Files.createDirectories(new Base(temporary).folder().resolve("weather"));
        for (int i = 0; i < Folder.MOST_FILES + 5; i++) {
            Files.createFile(weather.resolve("w" + i + ".csv"));
        }
        Folder folder = new Folder(weather.getParent());
        assertEquals(Folder.MOST_FILES, folder.files().size());
        assertEquals(List.of("too-many-files"), folder.findings().stream().map(Finding::rule).toList());
    }
}
