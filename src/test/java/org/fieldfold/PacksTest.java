package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipInputStream;
import org.fieldfold.report.Sha256;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Packs of the base that ships: whole, the same however the region is split, and kept when nothing changed. */
class PacksTest {
    @TempDir
    Path folder;

    private Packs.Packed pack(String out, String offices, String slice) throws IOException {
        return Packs.pack(new Packs.Request(Path.of("content"), folder.resolve(out), Optional.empty(), true,
                OfficeChoice.of(offices, slice), false), (done, made, of) -> { }, () -> false);
    }

    private static SortedMap<String, String> bytes(Path root) throws IOException {
        SortedMap<String, String> found = new TreeMap<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                if (!file.toString().endsWith(".lock")) {
                    found.put(root.relativize(file).toString(), Sha256.of(Files.readAllBytes(file)));
                }
            }
        }
        return found;
    }

    @Test
    void slicesAndRangesTogetherAreTheWhole() throws Exception {
        Packs.Packed whole = pack("whole", "..", "1/1");
        assertEquals(5, whole.made());
        pack("parts", "..lowb", "1/2");
        pack("parts", "..lowb", "2/2");
        assertEquals(3, pack("parts", "m..", "1/1").made());
        SortedMap<String, String> one = bytes(whole.folder().orElseThrow());
        assertEquals(one, bytes(folder.resolve("parts").resolve(whole.folder().get().getFileName())));
        assertTrue(one.containsKey("tarnfield/index.html"), one.keySet().toString());
        assertTrue(one.containsKey("tarnfield/potato.es.letter.pdf"), one.keySet().toString());
        Path offices = whole.folder().get();
        assertTrue(Files.readString(offices.resolve("hazel-ridge/index.html"))
                .contains("Left out by this office: Fall armyworm"));
        assertTrue(Files.readString(offices.resolve("lowbridge/index.html"))
                .contains("<b>For apple:</b> codling moth, apple maggot,"));
        assertTrue(Files.readString(offices.resolve("tarnfield/index.html"))
                .contains("With a note of this office on: Leek moth"));
        assertTrue(Files.readString(offices.resolve("saltmere/index.html"))
                .contains("href=\"apple.en.a4.poster.pdf\""));
        assertTrue(one.containsKey("saltmere/apple.en.a4.large-print.pdf"), one.keySet().toString());
        assertTrue(one.keySet().stream().noneMatch(name -> name.startsWith("lowbridge/")
                && name.contains("large-print")),
                one.keySet().toString());
        assertTrue(one.containsKey("northmoor/print-me-first.a4.pdf"), one.keySet().toString());
        assertEveryWayLeadsToAFile(offices.resolve("tarnfield"));
        assertTheZipHoldsTheFolder(whole.folder().get().resolve("lowbridge"));
        assertNoErrorOnThePages(whole.folder().get());

        Packs.Packed rerun = pack("whole", "..", "1/1");
        assertEquals(List.of(0, 5, 0), List.of(rerun.made(), rerun.kept(), rerun.left()));
        Files.writeString(whole.folder().get().resolve("saltmere/" + MadeFrom.NAME), "other\n");
        assertEquals(1, pack("whole", "..", "1/1").made());
        assertEquals(one, bytes(whole.folder().get()));
    }

    @Test
    void aRunThatWasStoppedGoesOnWhereItWas() throws IOException {
        AtomicInteger done = new AtomicInteger();
        Packs.Packed stopped = Packs.pack(new Packs.Request(Path.of("content"), folder, Optional.empty(), true,
                OfficeChoice.of("..", "1/1"), false), (at, made, of) -> done.set(at), () -> done.get() >= 1);
        assertTrue(stopped.made() >= 1 && stopped.left() >= 1, stopped.made() + " made");
        Packs.Packed rest = Packs.pack(new Packs.Request(Path.of("content"), folder, Optional.empty(), true,
                OfficeChoice.of("..", "1/1"), false), (at, made, of) -> { }, () -> false);
        assertEquals(List.of(stopped.left(), stopped.made(), 0), List.of(rest.made(), rest.kept(), rest.left()));
    }

    @Test
    void aRefusedRunPutsBackThePackThatWasCutOff() throws IOException {
        Path packs = Files.createDirectories(folder.resolve("out/packs-2027"));
        Files.writeString(Files.createDirectory(packs.resolve(".mill.former")).resolve("index.html"), "pack");
        Path empty = Files.createDirectory(folder.resolve("content"));
        assertEquals(Optional.empty(), Packs.pack(new Packs.Request(empty, folder.resolve("out"), Optional.empty(),
                false, OfficeChoice.of("..", "1/1"), false), (done, made, of) -> { }, () -> false).folder());
        assertEquals("pack", Files.readString(packs.resolve("mill/index.html")));
    }

    @Test
    void aChoiceIsRefusedWithWhatWasExpected() {
        List<String> ids = List.of("b", "ma", "a", "z", "mz");
        assertEquals(List.of("a", "b", "ma", "mz"), OfficeChoice.of("a..m", "1/1").of(ids));
        assertEquals(List.of("b", "mz"), OfficeChoice.of("..m", "2/2").of(ids));
        assertEquals("expected a slice from 1/8 to 8/8, found 9/8",
                assertThrows(IllegalArgumentException.class, () -> OfficeChoice.of("..", "9/8")).getMessage());
        assertThrows(IllegalArgumentException.class, () -> OfficeChoice.of("A..M", "1/1"));
    }

    private static void assertTheZipHoldsTheFolder(Path office) throws IOException {
        SortedMap<String, String> packed = new TreeMap<>();
        Path zip = office.resolve("lowbridge-2027.zip");
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(zip))) {
            for (var entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                packed.put(entry.getName().replace("lowbridge-2027/", ""), Sha256.of(in.readAllBytes()));
            }
        }
        SortedMap<String, String> beside = bytes(office);
        beside.remove("lowbridge-2027.zip");
        beside.remove(MadeFrom.NAME);
        assertEquals(beside, packed);
    }

    /** Opened from a folder, without any network. */
    private static void assertEveryWayLeadsToAFile(Path office) throws IOException {
        String page = Files.readString(office.resolve("index.html"));
        List<String> ways = Pattern.compile("(?:href|src)=\"([^\"#]+)\"").matcher(page).results()
                .map(way -> way.group(1)).toList();
        assertTrue(ways.size() > 40, ways.toString());
        ways.forEach(way -> assertTrue(way.matches("[a-z0-9.-]+") && Files.exists(office.resolve(way)), way));
    }

    /** The Nu HTML checker, as a process of its own. */
    private static void assertNoErrorOnThePages(Path packs) throws Exception {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin",
                "java").toString(), "-cp", System.getProperty("java.class.path"),
                "nu.validator.client.SimpleCommandLineValidator", "--errors-only", "--format", "json"));
        Stream.of("hazel-ridge", "saltmere").forEach(office ->
                command.add(packs.resolve(office).resolve("index.html").toString()));
        Process nu = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(nu.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(nu.waitFor(1, TimeUnit.MINUTES));
        assertTrue(said.contains("\"messages\":[]"), said);
    }
}
