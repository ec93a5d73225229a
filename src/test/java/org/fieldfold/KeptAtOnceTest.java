package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fieldfold.report.Sha256;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two processes that build different things at the same time, over and over, and take what they can from one
 * folder of kept results, which both fill and tidy: each of their builds has the bytes of one that makes
 * everything.
 */
class KeptAtOnceTest {
    private static final Path SOUND = Path.of("src/test/resources/org/fieldfold/check/base");
    private static final int ROUNDS = 4;

    @TempDir
    private Path folder;

    /** A base, and where it is built. */
    private record Job(Path content, Path out, int year) {
        /** The bytes of the build with one text or another, without anything from earlier builds. */
        String clean(int round, Path elsewhere) throws IOException {
            edit(content, round);
            return built(new Compiler.Request(content, elsewhere, Optional.empty(), true, true), year);
        }
    }

    @BeforeEach
    void lay() throws IOException {
        for (String year : List.of("2027", "2028")) {
            FolderCopy.of(SOUND, folder.resolve("of-" + year).resolve("content"));
        }
        Path edition = folder.resolve("of-2028/content/edition.yaml");
        Files.writeString(edition, Files.readString(edition).replace("2028", "2029").replace("2027", "2028"));
    }

    @Test
    void twoYearsInOneFolder() throws Exception {
        Path out = folder.resolve("out");
        assertBuildsAreClean(new Job(folder.resolve("of-2027/content"), out, 2027),
                new Job(folder.resolve("of-2028/content"), out, 2028));
    }

    /** The same base in two folders whose kept results are one folder: even the names of what is kept are the same. */
    @Test
    void twoFoldersWithOneStore() throws Exception {
        Path shared = Files.createDirectories(folder.resolve("shared"));
        List<Job> jobs = new ArrayList<>();
        for (String name : List.of("one", "two")) {
            Path out = Files.createDirectories(folder.resolve(name));
            try {
                Files.createSymbolicLink(out.resolve(".kept"), shared);
            } catch (IOException | UnsupportedOperationException noLinks) {
                assumeTrue(false, "left out: no links on this machine");
            }
            Path content = FolderCopy.of(folder.resolve("of-2027/content"), folder.resolve(name + "-base/content"));
            jobs.add(new Job(content, out, 2027));
        }
        assertBuildsAreClean(jobs.get(0), jobs.get(1));
    }

    private void assertBuildsAreClean(Job one, Job two) throws Exception {
        List<List<String>> said = new ArrayList<>();
        List<Process> processes = new ArrayList<>();
        try {
            for (Job job : List.of(one, two)) {
                processes.add(Outside.machine(List.of("-Xmx400m"), KeptAtOnceTest.class, job.content().toString(),
                        job.out().toString(), String.valueOf(job.year())).redirectError(
                                ProcessBuilder.Redirect.INHERIT).start());
            }
            List<BufferedReader> lines = processes.stream().map(process ->
                    process.inputReader(StandardCharsets.UTF_8)).toList();
            for (BufferedReader line : lines) {
                assertEquals("ready", line.readLine());
            }
            for (Process process : processes) {
                process.outputWriter(StandardCharsets.UTF_8).append("go\n").close();
            }
            for (BufferedReader line : lines) {
                said.add(line.lines().toList());
            }
        } finally {
            processes.forEach(Process::destroyForcibly);
        }
        int taken = 0;
        for (Job job : List.of(one, two)) {
            List<String> lines = said.get(job == one ? 0 : 1);
            assertEquals(ROUNDS, lines.size(), "builds that came to their end");
            String even = job.clean(0, folder.resolve("clean"));
            String odd = job.clean(1, folder.resolve("clean"));
            for (int round = 0; round < ROUNDS; round++) {
                String[] words = lines.get(round).split(" ");
                assertEquals(round % 2 == 0 ? even : odd, words[0], job + ", round " + round);
                taken += Integer.parseInt(words[1]);
            }
        }
        assertTrue(taken > 0, "something was taken from earlier builds");
    }

    /** Builds a base in turn with one text and another, and says the hash of each build and what it took. */
    public static void main(String[] args) throws IOException {
        System.out.println("ready");
        if (System.in.read() < 0) {
            return;
        }
        for (int round = 0; round < ROUNDS; round++) {
            Path content = Path.of(args[0]);
            edit(content, round);
            Compiler.Request request = new Compiler.Request(content, Path.of(args[1]), Optional.empty(), true,
                    false);
            Compiler.Built built = Compiler.compile(request, step -> { });
            System.out.println(hash(Path.of(args[1], args[2])) + " " + built.work().taken());
        }
    }

    private static void edit(Path content, int round) throws IOException {
        Path pest = content.resolve("pests/potato-beetle.yaml");
        Files.writeString(pest, Files.readString(pest).replaceFirst("Humped, brick (red|brown)",
                "Humped, brick " + (round % 2 == 0 ? "red" : "brown")));
    }

    private static String built(Compiler.Request request, int year) throws IOException {
        Compiler.compile(request, step -> { });
        return hash(request.out().resolve(String.valueOf(year)));
    }

    /** Of every file of a build, by its path and bytes. */
    private static String hash(Path build) throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(build)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                all.append(build.relativize(file)).append(' ').append(Sha256.of(Files.readAllBytes(file)))
                        .append('\n');
            }
        }
        return Sha256.of(all.toString().getBytes(StandardCharsets.UTF_8));
    }
}
