package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.fieldfold.FolderCopy;

/**
 * Whatever is edited in a base, one that takes what it can from what earlier processes wrote down is in every
 * record, place and finding the one that is read anew. Each try edits what the tries before it have left.
 */
class KeptReadingsProperties {
    private static final Path SOUND = Path.of("src/test/resources/org/fieldfold/check/base");

    private static Path folder;
    private static byte[] written = new byte[0];
    private static int taken;

    @BeforeContainer
    static void lay() throws IOException {
        folder = FolderCopy.of(SOUND, Files.createTempDirectory("readings"));
    }

    @AfterContainer
    static void clear() throws IOException {
        assertTrue(taken > 0, "something was taken");
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Collections.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    @Property(tries = 150, shrinking = ShrinkingMode.OFF)
    void isTheSameAsReadAnew(@ForAll long seed) throws IOException {
        String edited = edit(new Random(seed));
        KeptReadings readings = new KeptReadings(written);
        LoadedBase loaded = readings.load(folder);
        assertEquals(WholeTree.of(BaseLoader.load(folder)), WholeTree.of(loaded), edited);
        taken += loaded.inputs().size() - readings.understood();
        written = readings.bytes();
    }

    private static String edit(Random random) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(Files::isRegularFile).sorted().toList();
        }
        Path file = files.get(random.nextInt(files.size()));
        byte[] bytes = Files.readAllBytes(file);
        int at = random.nextInt(bytes.length + 1);
        int to = Math.min(bytes.length, at + random.nextInt(4));
        String found = " ,\n,:,- ,#,\",é,ő,😀,5,0,a, {,[link](#leek-moth),**,\t,\u00a0,\r\n";
        byte[] put = found.split(",")[random.nextInt(found.split(",").length)]
                .getBytes(StandardCharsets.UTF_8);
        switch (random.nextInt(5)) {
            case 0 -> Files.write(file, joined(bytes, at, put, at));
            case 1 -> Files.write(file, joined(bytes, at, new byte[0], to));
            case 2 -> Files.write(file, joined("\n".getBytes(StandardCharsets.UTF_8), 1, bytes, 1));
            case 3 -> Files.write(file, joined(bytes, at, put, to));
            default -> Files.copy(SOUND.resolve(folder.relativize(file).toString()), file,
                    java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        }
        return folder.relativize(file) + " at " + at;
    }

    /** Bytes with those from one offset to another exchanged. */
    private static byte[] joined(byte[] bytes, int from, byte[] put, int to) {
        byte[] joined = Arrays.copyOf(bytes, from + put.length + bytes.length - to);
        System.arraycopy(put, 0, joined, from, put.length);
        System.arraycopy(bytes, to, joined, from + put.length, bytes.length - to);
        return joined;
    }
}
