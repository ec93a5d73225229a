package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * A file says the same with LF, with CRLF and with a byte-order mark: same facts, same findings, same places.
 */
class LineEndsTest {
    private record Read(Object records, List<String> places, List<String> findings) {
    }

    @TestFactory
    List<DynamicTest> oneFileThreeWays() throws IOException {
        try (Stream<Path> content = Files.walk(Path.of("content"));
                Stream<Path> samples =
                        Files.walk(Path.of("src/test/resources/org/fieldfold/content/samples"))) {
            return Stream.concat(content, samples).filter(file -> file.toString()
                    .matches(".*\\.(yaml|csv|svg|md)"))
                    .sorted().map(file -> DynamicTest.dynamicTest(file.toString(), () -> check(file)))
                            .toList();
        }
    }

    private void check(Path file) throws IOException {
        // as Latin-1, so that samples with damaged bytes keep them
        String text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
        assertFalse(text.contains("\r"), "files are kept with LF");
        Read lf = read(file, text);
        assertEquals(lf, read(file, text.replace("\n", "\r\n")), "CRLF");
        assertEquals(lf, read(file, "\u00ef\u00bb\u00bf" + text), "byte-order mark");
    }

    private static Read read(Path file, String latin) {
        FileKind kind = FileKind.of(file.getParent().getFileName().toString().equals("content") ? ""
                : file.getParent().getFileName().toString(), file.getFileName().toString())
                        .orElse(FileKind.CROPS);
        FileReading reading = FileReading.of(new ContentFile(file.toString(), file, kind, "x"),
                latin.getBytes(StandardCharsets.ISO_8859_1));
        return new Read(reading.records(), reading.records().values().stream().flatMap(record ->
                record.spans().byPath()
                .entrySet().stream().map(place -> place.getKey() + " " + place.getValue().place())).sorted()
                        .toList(),
                reading.findings().stream().map(Base::shown).map(shown -> shown.replaceAll("at byte [0-9]+ ",
                        ""))
                        .toList());
    }
}
