package org.fieldfold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fieldfold.Compiler;
import org.fieldfold.Editions;
import org.fieldfold.FolderCopy;
import org.fieldfold.Outside;
import org.fieldfold.Signing;
import org.fieldfold.WholeFile;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.output.UnwritableException;
import org.fieldfold.source.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that is full, a folder that takes nothing: the last build stays, and the message says what to do. */
class UnwritableTest {
    @TempDir
    private Path folder;

    @Test
    void onAFullDiskTheLastBuildStays() throws IOException {
        Compiler.Built built = Compiler.compile(request(folder), step -> { });
        long size = built.outputs().stream().mapToLong(file -> file.size()).sum();
        try (FileSystem disk = disk(2 * size - size / 2)) {
            Path out = disk.getPath("/out");
            Compiler.compile(request(out), step -> { });
            String manifest = Files.readString(out.resolve("2027/manifest.json"));
            UnwritableException full = assertThrows(UnwritableException.class,
                    () -> Compiler.compile(request(out), step -> { }));
            assertTrue(full.getMessage().contains("could not write /out/2027/"), full.getMessage());
            assertTrue(full.getMessage().contains("the last build stays as it was. Make room"),
                    full.getMessage());
            assertEquals(manifest, Files.readString(out.resolve("2027/manifest.json")));
            try (Stream<Path> left = Files.list(out)) {
                assertEquals(List.of(".2027.lock", "2027"),
                        left.map(file -> file.getFileName().toString()).sorted().toList());
            }
        }
    }

    @Test
    void onAFullDiskAnEntryStaysAsItWas() throws IOException {
        byte[] large = new byte[60_000];
        try (FileSystem disk = disk(100_000)) {
            Path file = disk.getPath("/entry.yaml");
            WholeFile.write(file, large);
            UnwritableException full = assertThrows(UnwritableException.class,
                    () -> WholeFile.write(file, new byte[60_001]));
            assertTrue(full.getMessage().contains("what stood there stays"), full.getMessage());
            assertEquals(large.length, Files.size(file));
            assertEquals(List.of("/entry.yaml"), list(disk.getPath("/")));
        }
    }

    /** In a process of its own, with less memory than the demo base takes. */
    @Test
    void whereMemoryEndsItIsSaid() throws Exception {
        Outside.Said said = Outside.run(Outside.machine(List.of("-Xmx24m"), Main.class, "compile", "--out",
                folder.toString()));
        assertEquals(3, said.status(), said.text());
        assertTrue(said.text().contains("MB that Java may take here"), said.text());
        assertTrue(said.text().contains("-Xmx4g"), said.text());
    }

    /** The modules of Java itself: permissions do not stop the user who runs a build machine, this does. */
    @Test
    void whatMayOnlyBeReadIsSaid() {
        FileSystem modules = FileSystems.getFileSystem(URI.create("jrt:/"));
        UnwritableException refused = assertThrows(UnwritableException.class,
                () -> OutputFolder.open(modules.getPath("/out"), "2027"));
        assertTrue(refused.getMessage().startsWith("could not write /out/2027: "), refused.getMessage());
        assertThrows(UnwritableException.class,
                () -> WholeFile.write(modules.getPath("/entry.yaml"), new byte[1]));
    }

    @Test
    void aFileInThePlaceOfTheFolderIsSaid() throws IOException {
        Path file = Files.write(folder.resolve("out"), new byte[1]);
        Desk.Run run = Desk.run((out, err) -> new Terminal(out, err, false, () -> 0), "compile", "--content",
                Desk.SOUND.toString(), "--out", file.toString());
        assertEquals(3, run.status());
        assertTrue(run.err().contains("fieldfold: could not write " + file.resolve("2027")
                + ": something else is in its place; the last build stays"), run.err());
    }

    /** A clock that runs ahead writes a day that is found; one that lags does not take an entry off the list. */
    @Test
    void aWrongClockIsFound() throws IOException, Editions.Refused {
        Path content = folder.resolve("content");
        FolderCopy.of(Desk.SOUND, content);
        sign(content, "2099-01-01");
        assertEquals(List.of("revision-date"), errors(content));
        sign(content, "1970-01-01");
        Desk.Run late = Desk.run((out, err) -> new Terminal(out, err, false, () -> 0), "worklist", "--content",
                content.toString());
        assertTrue(late.out().contains("potato-beetle"), late.out());
    }

    private static void sign(Path content, String today) throws IOException, Editions.Refused {
        Signing.sign(content, List.of("potato-beetle"), "rowan", false, LocalDate.parse(today));
    }

    private static List<String> errors(Path content) throws IOException {
        return Compiler.check(content, Optional.empty()).findings().stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .map(finding -> finding.rule()).toList();
    }

    private static FileSystem disk(long bytes) {
        return Jimfs.newFileSystem(Configuration.unix().toBuilder().setBlockSize(4_096).setMaxSize(bytes)
                .setWorkingDirectory("/").build());
    }

    private static List<String> list(Path root) throws IOException {
        try (Stream<Path> files = Files.list(root)) {
            return files.map(Path::toString).toList();
        }
    }

    private static Compiler.Request request(Path out) {
        return new Compiler.Request(Desk.SOUND, out, Optional.empty(), false);
    }
}
