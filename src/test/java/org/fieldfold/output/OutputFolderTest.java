package org.fieldfold.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An output folder is either the old build or the new one, whole. */
class OutputFolderTest {
    @TempDir
    Path parent;

    @Test
    void theNewBuildReplacesTheOldOneWhole() throws IOException {
        build("old.txt");
        build("deep/new.txt");
        assertFalse(Files.exists(parent.resolve("2027/old.txt")));
        assertEquals("deep/new.txt", Files.readString(parent.resolve("2027/deep/new.txt")));
        try (Stream<Path> left = Files.list(parent)) {
            assertEquals(1, left.filter(Files::isDirectory).count(), "nothing but the build is left");
        }
    }

    @Test
    void aBuildThatFailsLeavesTheOldOne() throws IOException {
        build("old.txt");
        try (OutputFolder folder = OutputFolder.open(parent, "2027")) {
            folder.write("new.txt", new byte[1]);
        }
        assertEquals("old.txt", Files.readString(parent.resolve("2027/old.txt")));
        assertFalse(Files.exists(parent.resolve("2027/new.txt")));
    }

    @Test
    void aBuildThatWasCutOffBetweenItsRenamesIsMended() throws IOException {
        build("old.txt");
        Files.move(parent.resolve("2027"), parent.resolve(".2027.former"));
        OutputFolder.open(parent, "2027").close();
        assertEquals("old.txt", Files.readString(parent.resolve("2027/old.txt")));
    }

    @Test
    void twoBuildsAtOnceAreRefused() throws IOException {
        try (OutputFolder first = OutputFolder.open(parent, "2027")) {
            assertThrows(OutputInUseException.class, () -> OutputFolder.open(parent, "2027"));
            first.publish();
        }
    }

    @Test
    void nothingIsWrittenOutside() throws IOException {
        try (OutputFolder folder = OutputFolder.open(parent, "2027")) {
            assertThrows(IOException.class, () -> folder.write("../outside.txt", new byte[1]));
        }
        assertFalse(Files.exists(parent.resolve("outside.txt")));
    }

    private void build(String path) throws IOException {
        try (OutputFolder folder = OutputFolder.open(parent, "2027")) {
            folder.write(path, path.getBytes(java.nio.charset.StandardCharsets.UTF_8));
            folder.publish();
        }
    }
}
