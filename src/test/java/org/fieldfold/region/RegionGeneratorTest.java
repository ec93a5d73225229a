package org.fieldfold.region;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.fieldfold.Compiler;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.report.Sha256;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A region is as large as asked for, passes every rule without an error, and comes out the same every time. */
class RegionGeneratorTest {
    @TempDir
    Path folder;

    @Test
    void aRegionOfTwoRoundsOfEntriesPassesEveryRule() throws IOException {
        RegionGenerator.Size size = new RegionGenerator.Size(34, 4, 7, 2, 12, 11);
        int files = RegionGenerator.write(size, folder.resolve("one"));
        Compiler.Checked checked = Compiler.check(folder.resolve("one"), Optional.empty());
        assertEquals(List.of(), checked.findings().stream().filter(finding ->
                finding.severity() == Severity.ERROR).map(Finding::message).toList());
        ContentBase base = checked.base().orElseThrow();
        assertEquals(List.of(34, 4, 7, 2), List.of(base.pests().size(), base.guides().size(), base.offices().size(),
                base.stations().size()));
        assertEquals(files, bytes("one").size());
        base.offices().values().forEach(office -> assertTrue(office.value().contact().phone()
                .matches("555-01[0-9]{2}"), office.value().contact().phone()));
        assertTrue(base.pests().keySet().stream().noneMatch(id -> Files.exists(Path.of("content/pests", id + ".yaml"))),
                base.pests().keySet().toString());

        RegionGenerator.write(size, folder.resolve("two"));
        assertEquals(bytes("one"), bytes("two"));
        RegionGenerator.write(new RegionGenerator.Size(34, 4, 7, 2, 12, 12), folder.resolve("three"));
        assertNotEquals(bytes("one").keySet(), bytes("three").keySet());
    }

    private SortedMap<String, String> bytes(String name) throws IOException {
        SortedMap<String, String> found = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder.resolve(name))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                found.put(folder.resolve(name).relativize(file).toString(), Sha256.of(Files.readAllBytes(file)));
            }
        }
        return found;
    }
}
