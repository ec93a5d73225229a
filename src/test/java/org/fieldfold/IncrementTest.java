package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fieldfold.content.KeptReadings;
import org.fieldfold.output.OutputFile;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a build takes from earlier ones, and what it does not. */
class IncrementTest {
    @TempDir
    private Path folder;
    private Path content;

    @BeforeEach
    void lay() throws IOException {
        content = folder.resolve("content");
        SmallBase.lay(content);
    }

    @Test
    void onlyWhatDependsOnAChangeIsMade() throws IOException {
        Compiler.Built first = build();
        int all = first.work().made();
        assertEquals(0, first.work().taken());
        assertTrue(all > 10, "sheets: " + all);

        Compiler.Built same = build();
        assertTrue(same.unchanged() && !first.unchanged());
        assertEquals(new Compiler.Work(0, all), same.work(), "nothing has changed");
        edit("pests/leek-moth.yaml", "names:", "# a line more\n\nnames:");
        edit("edition.yaml", "year:", "# and here\nyear:");
        assertEquals(new Compiler.Work(0, all), build().work(), "only places have changed");

        edit("offices/tarnfield.yaml", "555-0122", "555-0123");
        Compiler.Built called = build();
        assertTrue(called.work().made() > 0 && called.work().made() < all, called.work().toString());
        List<String> own = called.outputs().stream().map(file -> file.path())
                .filter(path -> path.startsWith("offices/") && path.endsWith(".pdf")).toList();
        assertEquals(own.size(), called.work().made(), "its own copies, and no others: " + own);

        edit("offices/tarnfield.yaml", "555-0123", "555-0122");
        assertEquals(new Compiler.Work(0, all), build().work(), "back to what an earlier build has made");
    }

    @Test
    void onlyAFileThatChangedIsRead() throws IOException {
        build();
        assertEquals(0, filesReadAnew());
        edit("pests/leek-moth.yaml", "names:", "# a line more\n\nnames:");
        assertEquals(1, filesReadAnew());
        build();
        assertEquals(0, filesReadAnew());
        Files.move(content, folder.resolve("moved"));
        content = folder.resolve("moved");
        assertTrue(filesReadAnew() > 20, "those of a base in another folder");
    }

    @Test
    void aRefusedBuildPutsTheLastOneBack() throws IOException {
        Compiler.Built first = build();
        Path last = folder.resolve("out/2027");
        Files.move(last, last.resolveSibling(".2027.former"));
        edit("edition.yaml", "languages:", "languages: [xx, yy]\nnothing:");
        assertEquals(Optional.empty(), build().folder());
        assertTrue(Files.exists(last.resolve(first.outputs().get(0).path())));
    }

    private int filesReadAnew() throws IOException {
        KeptReadings readings = EarlierBuilds.readings(content, EarlierBuilds.of(request()));
        readings.load(content);
        return readings.understood();
    }

    @Test
    void damagedResultsAreMadeAnew() throws IOException {
        Compiler.Built first = build();
        int damaged = 0;
        for (Path file : kept()) {
            byte[] bytes = Files.readAllBytes(file);
            int at = Math.floorMod(file.getFileName().toString().hashCode(), bytes.length);
            if (damaged % 3 == 0) {
                bytes[at] ^= 1;
            }
            Files.write(file, damaged % 3 == 1 ? Arrays.copyOf(bytes, at) : damaged % 3 == 2 ? new byte[0]
                    : bytes);
            damaged++;
        }
        assertTrue(damaged > 10, "results: " + damaged);
        Compiler.Built second = build();
        assertEquals(first.work(), second.work(), "all are made again");
        assertEquals(first.outputs(), second.outputs());
        assertEquals(first.findings(), second.findings());
        assertEquals(new Compiler.Work(0, first.work().made()), build().work(), "and kept again");
    }

    @Test
    void whereNothingHasChangedTheSameIsSaid() throws IOException {
        Compiler.Built first = build();
        Compiler.Built same = build();
        assertTrue(same.unchanged());
        assertEquals(first.findings(), same.findings());
        assertTrue(first.findings().size() > 3, "findings: " + first.findings().size());
        for (int i = 0; i < first.findings().size(); i++) {
            Finding then = first.findings().get(i);
            Finding now = same.findings().get(i);
            assertEquals(then.span().place(), now.span().place());
            assertEquals(then.span().file().text(), now.span().file().text(), "the line that is shown");
        }
        assertEquals(first.fit(), same.fit());
        assertEquals(first.outputs(), same.outputs());
        assertEquals(first.whereToLook(), same.whereToLook());
        assertEquals(first.folder(), same.folder());

        assertFalse(build(true, false, Optional.of(LocalDate.of(2027, 1, 1))).unchanged(), "another day");
        assertFalse(build(true, true, Optional.empty()).unchanged(), "everything was asked for");
        assertTrue(build().unchanged(), "the same edition stands there");
        Files.createDirectory(content.resolve("odd"));
        Compiler.Built odd = build();
        assertFalse(odd.unchanged(), "a folder that is not read is a finding");
        assertEquals(first.findings().size() + 1, odd.findings().size());
        Files.delete(content.resolve("odd"));
        assertFalse(build().unchanged(), "the last build was of another base");
        assertTrue(build().unchanged());
    }

    @Test
    void whatWasDoneToAPublishedFileIsUndone() throws IOException {
        Compiler.Built first = build();
        List<String> paths = first.outputs().stream().map(OutputFile::path).toList();
        List<String> some = List.of("manifest.json", "handbook.en.html", paths.stream()
                .filter(path -> path.endsWith(".pdf")).findFirst().orElseThrow());
        for (String path : some) {
            Path file = first.folder().orElseThrow().resolve(path);
            byte[] was = Files.readAllBytes(file);
            byte[] other = was.clone();
            other[was.length / 2] ^= 4;
            Files.write(file, other);
            Compiler.Built again = build();
            assertFalse(again.unchanged(), path);
            assertArrayEquals(was, Files.readAllBytes(file), path);
            assertEquals(first.outputs(), again.outputs());
            assertEquals(0, again.work().made(), "what is kept was not hurt: " + path);
            Files.delete(file);
            assertFalse(build().unchanged(), path);
            assertArrayEquals(was, Files.readAllBytes(file), path);
        }
        Path more = Files.writeString(first.folder().orElseThrow().resolve("foldouts/note.txt"), "call me");
        assertFalse(build().unchanged());
        assertFalse(Files.exists(more), "a build holds what it says and no more");
        assertTrue(build().unchanged());
    }

    @Test
    void aCheckTakesWhatBuildsKeptAndAddsToIt() throws IOException {
        Path out = folder.resolve("out");
        Compiler.check(content, Optional.empty(), out);
        assertFalse(Files.exists(out), "a check writes nothing where nothing was built");
        build();
        List<Path> before = kept();
        for (String[] edit : new String[][] {{"common: leek moth", "common: leek moth Killitol®"},
                {"names:", "# a line more\n\nnames:"}, {"crops: [", "crops: [["}, {"crops: [[", "crops: ["}}) {
            edit("pests/leek-moth.yaml", edit[0], edit[1]);
            List<Finding> anew = Compiler.check(content, Optional.empty()).findings();
            List<Finding> taken = Compiler.check(content, Optional.empty(), out).findings();
            assertEquals(anew, taken, edit[1]);
            assertEquals(shown(anew), shown(taken), edit[1]);
            assertEquals(0, filesReadAnew(), "what was read is left for the next");
        }
        assertEquals(before, kept(), "in the place of what was there");
        assertEquals(Compiler.check(content, Optional.of(LocalDate.of(2029, 1, 1))).findings(),
                Compiler.check(content, Optional.of(LocalDate.of(2029, 1, 1)), out).findings(), "another day");
        assertFalse(build().unchanged());
    }

    private static List<String> shown(List<Finding> findings) {
        return findings.stream().map(finding -> finding.span().place() + " "
                + finding.span().file().lineText(finding.span().line())).toList();
    }

    /** What is issued is made of its content alone, then and whenever it is built again. */
    @Test
    void anIssuedEditionTakesNothing() throws IOException, Editions.Refused {
        Path own = FolderCopy.of(Path.of("src/test/resources/org/fieldfold/check/base"), folder.resolve("sound"));
        Compiler.Request request = new Compiler.Request(own, folder.resolve("out"), Optional.empty(), false,
                false);
        Compiler.Built before = Compiler.compile(request, step -> { });
        assertEquals(before.work().made(), Compiler.compile(request, step -> { }).work().taken());
        Compiler.Built issued = Issue.edition(request, Optional.empty(), LocalDate.of(2027, 1, 14), step -> { })
                .built();
        Compiler.Built again = Compiler.compile(request, step -> { });
        assertEquals(0, issued.work().taken());
        assertEquals(0, again.work().taken());
        assertEquals(issued.outputs(), again.outputs());
        assertTrue(EarlierBuilds.mayBeIssued(own), "nor is what was read taken");
        assertSame(Judging.ANEW, EarlierBuilds.judging(own, EarlierBuilds.of(request)), "nor what rules found");
    }

    private Compiler.Built build() throws IOException {
        return build(true, false, Optional.empty());
    }

    private Compiler.Built build(boolean proof, boolean anew, Optional<LocalDate> asOf) throws IOException {
        return Compiler.compile(new Compiler.Request(content, folder.resolve("out"), asOf, proof, anew),
                step -> { });
    }

    private Compiler.Request request() {
        return new Compiler.Request(content, folder.resolve("out"), Optional.empty(), true, false);
    }

    private void edit(String file, String was, String is) throws IOException {
        String text = Files.readString(content.resolve(file));
        assertTrue(text.contains(was), was + " in " + file);
        Files.writeString(content.resolve(file), text.replace(was, is));
    }

    private List<Path> kept() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("out/.kept"))) {
            return files.filter(file -> file.getFileName().toString().matches("[0-9a-f]{64}|small")).sorted()
                    .toList();
        }
    }
}
