package org.fieldfold.preview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Saves as editors make them, with the system's watcher and without it. */
class FolderWatchTest {
    private static final long PATIENCE_NANOS = 20_000_000_000L;

    @TempDir
    private Path root;
    private FolderWatch watch;
    /** All texts of the folder, as whoever was told found them. */
    private final List<String> told = Collections.synchronizedList(new ArrayList<>());

    private void follow(boolean polling) throws IOException {
        save("pests/leek-moth.yaml", "first");
        save("pests/onion-maggot.yaml", "other");
        Runnable changed = () -> told.add(texts());
        watch = polling ? FolderWatch.polling(root, changed) : FolderWatch.of(root, changed);
    }

    @AfterEach
    void close() {
        watch.close();
    }

    private void save(String file, String text) throws IOException {
        Files.createDirectories(root.resolve(file).getParent());
        Files.writeString(root.resolve(file), text);
    }

    private String texts() {
        StringBuilder texts = new StringBuilder();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                texts.append(root.relativize(file)).append('=').append(Files.readString(file)).append(' ');
            }
        } catch (IOException | java.io.UncheckedIOException moved) {
            texts.append("moved");
        }
        return texts.toString();
    }

    /** Whoever was told last has found the folder as it is now. */
    private void seen() throws InterruptedException {
        String now = texts();
        until(() -> !told.isEmpty() && told.get(told.size() - 1).equals(now), now);
    }

    private void until(BooleanSupplier reached, String what) throws InterruptedException {
        long end = System.nanoTime() + PATIENCE_NANOS;
        while (!reached.getAsBoolean()) {
            assertTrue(System.nanoTime() < end, () -> "expected " + what + ", told " + told);
            Thread.sleep(5);
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void aSaveInPlace(boolean polling) throws Exception {
        follow(polling);
        save("pests/leek-moth.yaml", "second");
        seen();
        save("pests/leek-moth.yaml", "third!");
        seen();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void aSaveThatIsWrittenBesideAndRenamed(boolean polling) throws Exception {
        follow(polling);
        for (String text : List.of("secnd", "third")) {
            save("pests/.leek-moth.yaml.tmp", text);
            Files.move(root.resolve("pests/.leek-moth.yaml.tmp"), root.resolve("pests/leek-moth.yaml"),
                    StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            seen();
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void aSaveThatMovesTheOldFileAway(boolean polling) throws Exception {
        follow(polling);
        Path file = root.resolve("pests/leek-moth.yaml");
        Path old = root.resolve("pests/leek-moth.yaml~");
        save("pests/.leek-moth.yaml.swp", "swap");
        Files.move(file, old);
        Files.writeString(file, "again");
        Files.delete(old);
        Files.delete(root.resolve("pests/.leek-moth.yaml.swp"));
        seen();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void anEditorsOwnFileThatComesAndGoesChangesNothingInTheEnd(boolean polling) throws Exception {
        follow(polling);
        String before = texts();
        save("pests/4913", "");
        Files.delete(root.resolve("pests/4913"));
        save("pests/leek-moth.yaml", "after");
        seen();
        save("pests/leek-moth.yaml", "first");
        until(() -> told.get(told.size() - 1).equals(before), before);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void aFolderThatIsDeletedAndMadeAgain(boolean polling) throws Exception {
        follow(polling);
        for (String file : List.of("pests/leek-moth.yaml", "pests/onion-maggot.yaml", "pests")) {
            Files.delete(root.resolve(file));
        }
        until(() -> !told.isEmpty() && told.get(told.size() - 1).isEmpty(), "an empty folder");
        save("pests/leek-moth.yaml", "back");
        seen();
        save("pests/leek-moth.yaml", "back once more");
        seen();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void aNewFolderInANewFolder(boolean polling) throws Exception {
        follow(polling);
        save("es/pests/leek-moth.yaml", "de");
        seen();
        save("es/pests/leek-moth.yaml", "de nuevo");
        seen();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void aBurstIsToldLessOftenThanItWasWritten(boolean polling) throws Exception {
        follow(polling);
        for (int i = 0; i < 60; i++) {
            save("pests/leek-moth.yaml", "text " + i);
        }
        seen();
        assertTrue(told.size() < 30, told.toString());
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void nothingIsToldWhileNothingChangesNorAfterTheEnd(boolean polling) throws Exception {
        follow(polling);
        texts();
        Thread.sleep(700);
        assertEquals(List.of(), List.copyOf(told));
        watch.close();
        save("pests/leek-moth.yaml", "after the end");
        Thread.sleep(700);
        assertEquals(List.of(), List.copyOf(told));
    }
}
