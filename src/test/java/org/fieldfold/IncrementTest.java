package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

        assertEquals(new Compiler.Work(0, all), build().work(), "nothing has changed");
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

    /** What is issued is made of its content alone, then and whenever it is built again. */
    @Test
    void anIssuedEditionTakesNothing() throws IOException, Editions.Refused {
        Path sound = Path.of("src/test/resources/org/fieldfold/check/base");
        Path own = folder.resolve("sound");
        try (Stream<Path> files = Files.walk(sound)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.createDirectories(own.resolve(sound.relativize(file)).getParent());
                Files.copy(file, own.resolve(sound.relativize(file)));
            }
        }
        Compiler.Request request = new Compiler.Request(own, folder.resolve("out"), Optional.empty(), false,
                false);
        Compiler.Built before = Compiler.compile(request, step -> { });
        assertEquals(before.work().made(), Compiler.compile(request, step -> { }).work().taken());
        Compiler.Built issued = Issue.edition(request, LocalDate.of(2027, 1, 14), step -> { }).built();
        Compiler.Built again = Compiler.compile(request, step -> { });
        assertEquals(0, issued.work().taken());
        assertEquals(0, again.work().taken());
        assertEquals(issued.outputs(), again.outputs());
    }

    private Compiler.Built build() throws IOException {
        return Compiler.compile(new Compiler.Request(content, folder.resolve("out"), Optional.empty(), true,
                false),
                step -> { });
    }

    private void edit(String file, String was, String is) throws IOException {
        String text = Files.readString(content.resolve(file));
        assertTrue(text.contains(was), was + " in " + file);
        Files.writeString(content.resolve(file), text.replace(was, is));
    }

    private List<Path> kept() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("out/.kept"))) {
            return files.filter(file -> file.getFileName().toString().length() == 64).sorted().toList();
        }
    }
}
