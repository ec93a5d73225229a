package org.fieldfold.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
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

    /** Several write at once; where one of them fails, the others may still be at it when the build is given up. */
    @Test
    void whoStillWritesWhenABuildIsGivenUpLeavesNothing() throws Exception {
        for (int round = 0; round < 20; round++) {
            List<Thread> writers = new ArrayList<>();
            AtomicInteger refused = new AtomicInteger();
            CountDownLatch begun = new CountDownLatch(4);
            try (OutputFolder folder = OutputFolder.open(parent, "2027")) {
                for (int i = 0; i < 4; i++) {
                    String name = "writer-" + i;
                    writers.add(new Thread(() -> write(folder, name, begun, refused)));
                }
                writers.forEach(Thread::start);
                begun.await();
            }
            for (Thread writer : writers) {
                writer.join();
            }
            assertEquals(4, refused.get(), "each was told");
            assertFalse(Files.exists(parent.resolve(".2027.next")));
        }
    }

    private static void write(OutputFolder folder, String name, CountDownLatch begun, AtomicInteger refused) {
        try {
            for (int i = 0; i < 5_000; i++) {
                folder.write(name + "/" + i + "/page", new byte[100]);
                begun.countDown();
            }
        } catch (IOException givenUp) {
            refused.incrementAndGet();
        }
    }

    @Test
    void aBuildThatWasCutOffBetweenItsRenamesIsMended() throws IOException {
        build("old.txt");
        Files.move(parent.resolve("2027"), parent.resolve(".2027.former"));
        OutputFolder.open(parent, "2027").close();
        assertEquals("old.txt", Files.readString(parent.resolve("2027/old.txt")));
    }

    /** Also when the next build comes to nothing, as one that is refused for its errors. */
    @Test
    void whatWasCutOffIsPutBackBeforeAnythingIsBuilt() throws IOException {
        CutOff.putBack(parent.resolve("none"));
        build("old.txt");
        Files.move(parent.resolve("2027"), parent.resolve(".2027.former"));
        Files.createDirectory(parent.resolve(".2027.next"));
        CutOff.putBack(parent);
        assertEquals("old.txt", Files.readString(parent.resolve("2027/old.txt")));
        try (Stream<Path> left = Files.list(parent)) {
            assertEquals(1, left.filter(Files::isDirectory).count());
        }
        build("new.txt");
        CutOff.putBack(parent);
        assertTrue(Files.exists(parent.resolve("2027/new.txt")));
    }

    /** Between its renames a build belongs to the one who publishes it. */
    @Test
    void whatIsBeingPublishedIsLeftAlone() throws IOException {
        build("old.txt");
        try (OutputFolder folder = OutputFolder.open(parent, "2027")) {
            folder.write("new.txt", new byte[1]);
            Files.move(parent.resolve("2027"), parent.resolve(".2027.former"));
            CutOff.putBack(parent);
            assertFalse(Files.exists(parent.resolve("2027")));
            folder.publish();
        }
        assertTrue(Files.exists(parent.resolve("2027/new.txt")));
        assertFalse(Files.exists(parent.resolve(".2027.former")));
    }

    /** A reader meets one build after the other, each whole, or for a moment none; he never goes back. */
    @Test
    void whoeverReadsWhileBuildsArePublishedMeetsOneOfThem() throws Exception {
        int last = 300;
        publish(0);
        Thread publishing = new Thread(() -> {
            for (int round = 1; round <= last; round++) {
                publish(round);
            }
        });
        publishing.start();
        int seen = 0;
        int misses = 0;
        int rounds = 0;
        while (seen < last) {
            try {
                String text = Files.readString(parent.resolve("2027/round.txt"));
                int round = Integer.parseInt(text.substring(0, text.indexOf(' ')));
                assertEquals((round + " ").repeat(5_000), text, "whole");
                assertTrue(round >= seen, "first " + seen + ", then " + round);
                rounds += round > seen ? 1 : 0;
                seen = round;
                misses = 0;
            } catch (NoSuchFileException between) {
                misses++;
                assertTrue(misses < 100_000, "none for " + misses + " looks, after round " + seen);
            }
        }
        publishing.join();
        assertTrue(rounds > 10, "builds that were met: " + rounds);
    }

    private void publish(int round) {
        try (OutputFolder folder = OutputFolder.open(parent, "2027")) {
            folder.write("round.txt", (round + " ").repeat(5_000)
                    .getBytes(java.nio.charset.StandardCharsets.UTF_8));
            folder.publish();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
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

    @Test
    void whatStaysTheSameIsKeptAndIsItsOwnFile() throws IOException {
        byte[] same = "the same".getBytes(java.nio.charset.StandardCharsets.UTF_8);
        Publication first;
        try (OutputFolder folder = OutputFolder.open(parent, "2027")) {
            folder.write("deep/made.txt", same, Optional.of("of this"));
            folder.write("plain.txt", same);
            folder.write("other.txt", same, Optional.of("of that"));
            first = folder.published();
            folder.publish();
        }
        assertTrue(first.stands(parent, "2027"));
        try (OutputFolder folder = OutputFolder.open(parent, "2027")) {
            assertFalse(folder.keep("deep/made.txt", "of this"), "nobody said what stands there");
            folder.follow(first);
            assertTrue(folder.keep("deep/made.txt", "of this"));
            assertFalse(folder.keep("other.txt", "of something else"));
            assertFalse(folder.keep("plain.txt", "of this"));
            folder.write("plain.txt", same);
            folder.write("other.txt", new byte[3]);
            assertEquals(1, folder.kept());
            assertEquals(first.files().get(0), folder.published().files().get(0));
            folder.publish();
        }
        assertFalse(first.stands(parent, "2027"));
        for (String path : List.of("deep/made.txt", "plain.txt")) {
            Path file = parent.resolve("2027").resolve(path);
            assertEquals("the same", Files.readString(file));
            if (Files.getFileStore(file).supportsFileAttributeView("unix")) {
                assertEquals(1, Files.getAttribute(file, "unix:nlink"), "no other file has its content");
            }
        }
    }

    @Test
    void aFileThatWasChangedIsNotKept() throws IOException {
        Publication first;
        try (OutputFolder folder = OutputFolder.open(parent, "2027")) {
            folder.write("made.txt", new byte[] {1, 2, 3}, Optional.of("of this"));
            first = folder.published();
            folder.publish();
        }
        Files.write(parent.resolve("2027/made.txt"), new byte[] {1, 2, 4});
        assertFalse(first.stands(parent, "2027"));
        try (OutputFolder folder = OutputFolder.open(parent, "2027")) {
            folder.follow(first);
            assertFalse(folder.keep("made.txt", "of this"));
            folder.write("made.txt", new byte[] {1, 2, 3}, Optional.of("of this"));
            folder.publish();
        }
        assertTrue(first.stands(parent, "2027"));
        Files.createDirectory(parent.resolve(".2027.former"));
        assertFalse(first.stands(parent, "2027"), "something was cut off");
        Files.delete(parent.resolve(".2027.former"));
        Files.createDirectory(parent.resolve("2027/empty"));
        assertFalse(first.stands(parent, "2027"), "a folder more");
    }

    private void build(String path) throws IOException {
        try (OutputFolder folder = OutputFolder.open(parent, "2027")) {
            folder.write(path, path.getBytes(java.nio.charset.StandardCharsets.UTF_8));
            folder.publish();
        }
    }
}
