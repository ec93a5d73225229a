package org.fieldfold.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.fieldfold.Compiler;
import org.fieldfold.FolderCopy;
import org.fieldfold.Outside;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.output.OutputInUseException;
import org.fieldfold.report.Sha256;
import org.fieldfold.source.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Processes are killed, without a chance to tidy up, at moments drawn from a seed; what they left is looked at. */
class KilledTest {
    /** Several hundred, so that rare moments are met: a publication takes a few milliseconds, its renames one. */
    private static final int PUBLICATIONS = 200;
    private static final int COMMANDS = 10;

    @TempDir
    private Path folder;

    @Test
    void aBuildIsWholeAtEveryMoment() throws Exception {
        Random moment = new Random(11);
        int builds = 0;
        for (int kill = 0; kill < PUBLICATIONS; kill++) {
            // nine in ten fall into the first rounds, the others later
            builds += killed(1, moment.nextInt(kill % 10 == 0 ? 200 : 40), "publish", folder.toString());
            Path build = Stream.of(folder.resolve("2027"), folder.resolve(".2027.former"))
                    .filter(Files::exists).findFirst().orElseThrow();
            String before = whole(build);
            OutputFolder.open(folder, "2027").close();
            assertEquals(before, whole(folder.resolve("2027")), "what stood, stands");
            try (Stream<Path> left = Files.list(folder)) {
                assertEquals(List.of(".2027.lock", "2027"),
                        left.map(file -> file.getFileName().toString()).sorted().toList());
            }
        }
        assertTrue(builds > PUBLICATIONS, "processes came to publish: " + builds);
    }

    @Test
    void whatCommandsChangeIsOldOrNewAndALedgerIsNeverTouched() throws Exception {
        Path content = folder.resolve("content");
        Path out = folder.resolve("out");
        FolderCopy.of(Desk.SOUND, content);
        assertEquals(0, at(content, "edition", "issue", "--out", out.toString()).status());
        assertEquals(0, at(content, "edition", "open", "2028").status());
        byte[] ledger = Files.readAllBytes(content.resolve("issued/2027.json"));
        Path issued = out.resolve("2027");
        String issuedBuild = whole(issued);
        String entry = facts(content);
        assertEquals(0, at(content, "compile", "--out", out.toString()).status());
        Random moment = new Random(12);
        for (int kill = 0; kill < COMMANDS; kill++) {
            killed(kill % 5, moment.nextInt(1_200), "commands", content.toString(), out.toString());
            assertArrayEquals(ledger, Files.readAllBytes(content.resolve("issued/2027.json")));
            assertEquals(issuedBuild, whole(issued));
            assertEquals(entry, facts(content));
            assertEquals(List.of(), Compiler.check(content, Optional.empty()).findings().stream()
                    .filter(finding -> finding.severity() == Severity.ERROR).toList());
            OutputFolder.open(out, "2028").close();
            assertNotEquals("", whole(out.resolve("2028")));
        }
    }

    /** Another process holds the folder: the second build is turned away, the first goes on. */
    @Test
    void twoProcessesNeverWriteOneBuild() throws Exception {
        Process first = Outside.machine(List.of(), Tireless.class, "hold", folder.toString()).start();
        try (BufferedReader said = first.inputReader(StandardCharsets.UTF_8)) {
            assertEquals("held", said.readLine());
            assertThrows(OutputInUseException.class, () -> OutputFolder.open(folder, "2027"));
        } finally {
            first.destroyForcibly().waitFor();
        }
        Tireless.publish(folder, 1);
        assertNotEquals("", whole(folder.resolve("2027")));
    }

    /** Lets a tireless process say some lines, and kills it some milliseconds later. Returns how many it said. */
    private int killed(int lines, int milliseconds, String... job) throws Exception {
        Path said = folder.resolveSibling(folder.getFileName() + ".said");
        Process process = Outside.machine(List.of(), Tireless.class, job).redirectErrorStream(true)
                .redirectOutput(said.toFile()).start();
        try {
            while (Files.readAllLines(said).size() < lines && process.isAlive()) {
                process.waitFor(1, TimeUnit.MILLISECONDS);
            }
            process.waitFor(milliseconds, TimeUnit.MILLISECONDS);
            process.destroyForcibly().waitFor();
            List<String> done = Files.readAllLines(said);
            assertTrue(done.stream().allMatch(line -> line.endsWith("done")), done::toString);
            return done.size();
        } finally {
            Files.delete(said);
        }
    }

    private static Desk.Run at(Path content, String... command) {
        return Desk.run((out, err) -> new Terminal(out, err, false, () -> 0, () -> LocalDate.of(2027, 1, 14)),
                Stream.concat(Stream.of(command), Stream.of("--content", content.toString()))
                        .toArray(String[]::new));
    }

    /** The entry that is changed, without what may change in it. */
    private static String facts(Path content) throws IOException {
        return Files.readString(content.resolve("pests/potato-beetle.yaml"))
                .replaceAll("value: (25|30)", "value: 25")
                .replaceAll("(?m)^(revised|reviser|signed-facts|signed-with): .*\\R", "");
    }

    /** Every file of a build is what its manifest says, and no other file is there. Returns the manifest. */
    private static String whole(Path build) throws IOException {
        String manifest = Files.readString(build.resolve("manifest.json"));
        TreeSet<String> listed = new TreeSet<>(List.of("manifest.json"));
        for (JsonNode file : new ObjectMapper().readTree(manifest).get("outputs")) {
            listed.add(file.get("path").asString());
            assertEquals(file.get("sha256").asString(),
                    Sha256.of(Files.readAllBytes(build.resolve(file.get("path").asString()))));
        }
        try (Stream<Path> files = Files.walk(build)) {
            assertEquals(listed, new TreeSet<>(files.filter(Files::isRegularFile)
                    .map(file -> build.relativize(file).toString().replace('\\', '/')).toList()));
        }
        return manifest;
    }
}
