package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.fieldfold.region.RegionGenerator;
import org.fieldfold.report.Sha256;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A region's packs, made by a process that is stopped in the middle by SIGINT, as Ctrl-C sends it: it ends what it
 * has begun and says how to go on, and going on leads to the same bytes as a run that was never stopped.
 */
class PackStopTest {
    private static final int OFFICES = 40;

    @TempDir
    Path folder;

    @Test
    void aRunThatIsStoppedGoesOnToTheSameBytes() throws Exception {
        RegionGenerator.write(new RegionGenerator.Size(4, 1, OFFICES, 1, 11, 5), folder.resolve("region"));
        List<String> said = new ArrayList<>();
        Process stopped = pack("stopped");
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(stopped.getInputStream(),
                StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                said.add(line);
                if (line.matches("[0-9]+ of " + OFFICES + " offices, .* left") && said.size() == 1) {
                    new ProcessBuilder("kill", "-INT", String.valueOf(stopped.pid())).start().waitFor();
                }
            }
        }
        assertTrue(stopped.waitFor(2, TimeUnit.MINUTES));
        SortedMap<String, String> part = bytes("stopped");
        long made = part.keySet().stream().filter(name -> name.endsWith("/index.html")).count();
        assertTrue(made > 0 && made < OFFICES, made + " made; " + said);
        assertTrue(said.contains(OFFICES - made + " packs are not made yet: the same command goes on"),
                said.toString());
        assertTrue(part.keySet().stream().noneMatch(name -> name.contains(".next/")), part.keySet().toString());

        Packs.Packed rest = goOn("stopped");
        assertEquals(List.of(OFFICES - (int) made, (int) made, 0), List.of(rest.made(), rest.kept(), rest.left()));
        goOn("whole");
        assertEquals(bytes("whole"), bytes("stopped"));
        assertTrue(goOn("whole").unchanged());
    }

    private Packs.Packed goOn(String out) throws IOException {
        return Packs.pack(new Packs.Request(folder.resolve("region"), folder.resolve(out), Optional.empty(), false,
                OfficeChoice.of("..", "1/1"), false), (done, madeNow, of) -> { }, () -> false);
    }

    private Process pack(String out) throws IOException {
        return new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx512m",
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Djava.awt.headless=true", "-cp",
                System.getProperty("java.class.path"), "org.fieldfold.cli.Main", "pack", "--content",
                folder.resolve("region").toString(), "--out", folder.resolve(out).toString())
                .redirectErrorStream(true).start();
    }

    private SortedMap<String, String> bytes(String name) throws IOException {
        SortedMap<String, String> found = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder.resolve(name))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                if (!file.toString().endsWith(".lock")) {
                    found.put(folder.resolve(name).relativize(file).toString(), Sha256.of(Files.readAllBytes(file)));
                }
            }
        }
        return found;
    }
}
