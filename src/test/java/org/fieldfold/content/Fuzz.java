package org.fieldfold.content;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a coverage-guided fuzzer runs, without knowing it: {@code mvn -Pfuzz} names the target. The first inputs
 * are the files of the demo base and of the samples, and what was kept of earlier runs.
 */
public final class Fuzz {
    private static final List<Path> SEEDS = List.of(FuzzTarget.BASE,
            Path.of("src/test/resources/org/fieldfold/content/samples"), Path.of("content"));
    private static final int LARGEST = 6_000;
    private static final int WARMING = 4;
    private static FuzzTarget target = FuzzTarget.LOADER;

    private Fuzz() {
    }

    /** @param arguments the target */
    public static void fuzzerInitialize(String[] arguments) {
        target = FuzzTarget.valueOf(arguments[0]);
        try {
            Path folder = Files.createDirectories(Path.of("target/fuzz", arguments[0], "seeds"));
            Files.createDirectories(folder.resolveSibling("found"));
            int number = 0;
            for (byte[] seed : seeds()) {
                Files.write(folder.resolve("seed" + number++), seed);
                if (number <= WARMING) {
                    // before the clock of an input runs: much is loaded, and rewritten to be watched, for the first
                    target.read(seed);
                }
            }
            for (Path kept : target.kept()) {
                Files.copy(kept, folder.resolve("kept-" + kept.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (EditRefused e) {
            throw new IllegalStateException(e);
        }
    }

    /** @param input any bytes */
    public static void fuzzerTestOneInput(byte[] input) {
        target.read(input);
    }

    private static List<byte[]> seeds() throws IOException, EditRefused {
        List<byte[]> seeds = new ArrayList<>();
        if (target == FuzzTarget.TABLE) {
            for (TableKind kind : TableKind.values()) {
                seeds.add(chosen(kind.ordinal(), Tables.export(FuzzBase.folder(), FuzzBase.content(), kind)
                        .getBytes(StandardCharsets.UTF_8)));
            }
            seeds.add(chosen(FuzzTarget.TRANSLATIONS - 'A', Tables.translations(FuzzBase.folder(),
                    FuzzBase.content(), FuzzBase.LANGUAGE).csv().getBytes(StandardCharsets.UTF_8)));
            return seeds;
        }
        for (Path root : SEEDS) {
            try (Stream<Path> files = Files.walk(root)) {
                for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                    seed(root, file, seeds);
                }
            }
        }
        return seeds;
    }

    private static void seed(Path root, Path file, List<byte[]> seeds) throws IOException {
        String folder = root.equals(file.getParent()) ? "" : file.getParent().getFileName().toString();
        String ending = file.getFileName().toString();
        byte[] bytes = Files.readAllBytes(file);
        bytes = bytes.length > LARGEST && ending.endsWith(".csv") ? Arrays.copyOf(bytes, 400) : bytes;
        if (bytes.length > LARGEST) {
            return;
        }
        if (target == FuzzTarget.DRAWING && ending.endsWith(".svg")
                || target == FuzzTarget.MARKDOWN && ending.endsWith(".md")) {
            seeds.add(bytes);
        } else if (target == FuzzTarget.LOADER) {
            byte[] content = bytes;
            FileKind.of(folder, ending).ifPresent(kind -> seeds.add(chosen(kind.ordinal(), content)));
        }
    }

    private static byte[] chosen(int choice, byte[] content) {
        byte[] all = new byte[content.length + 1];
        all[0] = (byte) ('A' + choice);
        System.arraycopy(content, 0, all, 1, content.length);
        return all;
    }
}
