package org.fieldfold.kept;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.io.OutputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Any byte of a program makes it another program. */
class ProgramTest {
    private static final String NAME = "org/fieldfold/kept/Key.class";

    @TempDir
    private Path folder;

    @Test
    void theRunningProgramIsKnown() {
        assertEquals(Program.of(Kept.class), Program.of(Key.class));
        assertTrue(Program.of(Kept.class).isPresent());
        assertEquals(Optional.empty(), Program.of(String.class),
                "nobody says what Java itself is loaded from");
    }

    @Test
    void aFolderOfClassesIsKnownByItsBytes() throws Exception {
        Path classes = Files.createDirectories(folder.resolve("classes"));
        lay(classes, "words", "one");
        Optional<String> first = of(classes);
        assertTrue(first.isPresent());
        assertEquals(first, of(classes));
        lay(classes, "words", "two");
        assertNotEquals(first, of(classes), "another resource");
        lay(classes, "words", "one");
        assertEquals(first, of(classes));
        Files.writeString(classes.resolve("more"), "");
        assertNotEquals(first, of(classes), "one file more");
    }

    /** Machines with one jar make parts of one whole, whatever runs it there. */
    @Test
    void theCodeAloneIsTheSameOnAnotherMachine() {
        Optional<String> here = Program.code(Key.class);
        Optional<String> whole = Program.of(Key.class);
        assertTrue(here.isPresent());
        String machine = System.getProperty("os.arch");
        try {
            System.setProperty("os.arch", "another");
            assertEquals(here, Program.code(Key.class));
            assertNotEquals(whole, Program.of(Key.class));
        } finally {
            System.setProperty("os.arch", machine);
        }
    }

    @Test
    void aJarIsKnownByItsBytes() throws Exception {
        Path one = jar("one.jar", "words");
        Path other = jar("other.jar", "worms");
        assertTrue(of(one).isPresent());
        assertNotEquals(of(one), of(other));
        assertNotEquals(of(one), of(one, other), "another library");
    }

    /** It runs what was read when it began; another process runs what stands there now. */
    @Test
    void aProgramStaysWhatItIsWhileItRuns() throws Exception {
        Path classes = Files.createDirectories(folder.resolve("classes"));
        lay(classes, "words", "one");
        try (URLClassLoader loader = new URLClassLoader(new URL[] {classes.toUri().toURL()},
                ClassLoader.getPlatformClassLoader())) {
            Class<?> type = loader.loadClass("org.fieldfold.kept.Key");
            Optional<String> begun = Program.of(type);
            lay(classes, "words", "two");
            assertEquals(begun, Program.of(type));
            assertNotEquals(begun, of(classes));
        }
    }

    private static Optional<String> of(Path... places) throws Exception {
        URL[] urls = new URL[places.length];
        for (int i = 0; i < urls.length; i++) {
            urls[i] = places[i].toUri().toURL();
        }
        try (URLClassLoader loader = new URLClassLoader(urls, ClassLoader.getPlatformClassLoader())) {
            return Program.of(loader.loadClass("org.fieldfold.kept.Key"));
        }
    }

    private static byte[] key() throws Exception {
        try (InputStream in = Key.class.getResourceAsStream("/" + NAME)) {
            return in.readAllBytes();
        }
    }

    private static void lay(Path classes, String resource, String text) throws Exception {
        Files.createDirectories(classes.resolve(NAME).getParent());
        Files.write(classes.resolve(NAME), key());
        Files.writeString(classes.resolve(resource), text);
    }

    private Path jar(String name, String text) throws Exception {
        Path jar = folder.resolve(name);
        try (OutputStream out = Files.newOutputStream(jar); ZipOutputStream zip = new ZipOutputStream(out)) {
            for (String entry : List.of(NAME, "words")) {
                zip.putNextEntry(new ZipEntry(entry));
                zip.write(entry.equals(NAME) ? key() : text
                        .getBytes(java.nio.charset.StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        }
        return jar;
    }
}
