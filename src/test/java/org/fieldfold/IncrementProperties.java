package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.fieldfold.report.Sha256;

/**
 * Whatever is edited in a base, a build that takes what it can from earlier ones gives the very bytes,
 * findings and fits of one that makes everything. Each try edits what the tries before it have left, so that
 * the kept results come from a long row of builds; now and then a file goes back to what it was.
 */
class IncrementProperties {
    private static Path folder;
    private static Path content;
    private static int taken;

    @BeforeContainer
    static void lay() throws IOException {
        folder = Files.createTempDirectory("increment");
        content = folder.resolve("content");
        SmallBase.lay(content);
        build("kept", false);
    }

    @AfterContainer
    static void clear() throws IOException {
        assertTrue(taken > 0, "something was taken from earlier builds");
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Collections.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    @Property(tries = 10, shrinking = ShrinkingMode.OFF)
    void isTheSameAsACleanBuild(@ForAll long seed) throws IOException {
        Random random = new Random(seed);
        String edited = edit(random);
        Compiler.Built some = build("kept", false);
        Compiler.Built all = build("clean", true);
        taken += some.work().taken();
        assertEquals(0, all.work().taken());
        assertEquals(all.findings().toString(), some.findings().toString(), edited);
        assertEquals(all.fit(), some.fit(), edited);
        assertEquals(all.folder().isPresent(), some.folder().isPresent(), edited);
        assertEquals(bytes(folder.resolve("clean/2027")), bytes(folder.resolve("kept/2027")), edited);
    }

    private static Compiler.Built build(String out, boolean anew) throws IOException {
        return Compiler.compile(new Compiler.Request(content, folder.resolve(out), Optional.empty(), true,
                anew),
                step -> { });
    }

    /**
     * Edits one line of one file, as somebody might or might not wish; a proof is built of whatever is left.
     */
    private static String edit(Random random) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(content)) {
            files = all.filter(file -> file.toString().matches(".*[.](yaml|svg|csv)"))
                    .filter(file -> !file.endsWith("content/edition.yaml")).sorted().toList();
        }
        List<Path> pests = files.stream().filter(file -> file.toString().contains("pests")).toList();
        Path file = random.nextBoolean() ? pick(pests, random) : pick(files, random);
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        int at = random.nextInt(lines.size());
        String was = lines.get(at);
        switch (random.nextInt(6)) {
            case 0 -> lines.set(at, was.matches(".*[a-z]\\.") ? was + " Look twice." : was);
            case 1 -> lines.set(at, was.matches(".*[a-z]\\.") ? was + " Ördög, ő, ĳ." : was + " ");
            case 2 -> lines.set(at, was.replaceFirst("[1-8]", String.valueOf(random.nextInt(9) + 1)));
            case 3 -> lines.add(0, file.toString().endsWith(".yaml") ? "# moved" : lines.get(0));
            case 4 -> lines.remove(at);
            default -> {
                Path first = Path.of("content").resolve(content.relativize(file).toString());
                lines = new ArrayList<>(Files.readAllLines(first));
            }
        }
        Files.write(file, lines);
        return content.relativize(file) + ":" + (at + 1) + ": " + was;
    }

    private static Path pick(List<Path> files, Random random) {
        return files.get(random.nextInt(files.size()));
    }

    private static SortedMap<String, String> bytes(Path build) throws IOException {
        SortedMap<String, String> bytes = new TreeMap<>();
        try (Stream<Path> files = Files.walk(build)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                bytes.put(build.relativize(file).toString(),
                        Sha256.of(Files.readAllBytes(file)));
            }
        }
        return bytes;
    }
}
