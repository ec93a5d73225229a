package org.fieldfold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.fieldfold.FolderCopy;
import org.fieldfold.Outside;
import org.fieldfold.report.Sha256;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bytes do not depend on where they are made: language, digits, time zone, charset, line ends, names of folders. */
class AnyMachineTest {
    /** Machines that have surprised programs before. */
    private static final List<List<String>> MACHINES = List.of(
            // an i without a dot when it is made small
            List.of("-Duser.language=tr", "-Duser.country=TR", "-Duser.timezone=Pacific/Kiritimati"),
            // digits that are not 0 to 9, and another calendar
            List.of("-Duser.language=ar", "-Duser.country=EG", "-Duser.extensions=nu-arab",
                    "-Duser.timezone=America/St_Johns"),
            List.of("-Duser.language=th", "-Duser.country=TH", "-Duser.extensions=ca-buddhist-nu-thai",
                    "-Dfile.encoding=windows-1252", "-Dline.separator=\r\n"));

    @TempDir
    private Path folder;

    @Test
    void makesTheSameBytes() throws Exception {
        Path plain = folder.resolve("plain");
        Desk.Run here = Desk.run((out, err) -> new Terminal(out, err, false, () -> 0), "compile", "--anew",
                "--content", Desk.SOUND.toString(), "--out", plain.toString());
        assertEquals(0, here.status(), here.err());
        List<String> expected = bytes(plain);
        for (int machine = 0; machine < MACHINES.size(); machine++) {
            Path out = folder.resolve("the baker's ñandú " + machine);
            Outside.Said said = Outside.run(Outside.machine(MACHINES.get(machine), Main.class, "compile",
                    "--anew", "--content", Desk.SOUND.toString(), "--out", out.toString()));
            assertEquals(0, said.status(), said.text());
            assertEquals(expected, bytes(out), MACHINES.get(machine).toString());
        }
    }

    /** Files that another system has saved with its own line ends hold the same facts. */
    @Test
    void otherLineEndsChangeNoSheet() throws Exception {
        Path content = folder.resolve("content");
        FolderCopy.of(Desk.SOUND, content);
        try (Stream<Path> files = Files.walk(content)) {
            for (Path file : files.filter(file -> file.toString().matches(".*[.](yaml|md|csv|svg)")).toList()) {
                Files.writeString(file, Files.readString(file).replace("\n", "\r\n"));
            }
        }
        assertEquals(sheets(Desk.SOUND, "as-it-is"), sheets(content, "saved-elsewhere"));
    }

    private List<String> sheets(Path content, String name) throws IOException {
        Path out = folder.resolve(name);
        Desk.Run run = Desk.run((said, err) -> new Terminal(said, err, false, () -> 0), "compile", "--content",
                content.toString(), "--out", out.toString());
        assertEquals(0, run.status(), run.err());
        return bytes(out).stream().filter(file -> file.contains("foldouts/")).toList();
    }

    private static List<String> bytes(Path out) throws IOException {
        try (Stream<Path> files = Files.walk(out)) {
            return files.filter(Files::isRegularFile).map(file -> {
                try {
                    return out.relativize(file).toString().replace('\\', '/')
                            + " " + Sha256.of(Files.readAllBytes(file));
                } catch (IOException failed) {
                    throw new java.io.UncheckedIOException(failed);
                }
            }).sorted().toList();
        }
    }
}
