package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each sample names the rule at the line that breaks it: {@code # error: rule} on the line itself, or
 * {@code # error-below: rule} on the line above where no comment can stand. Nothing else may be found.
 */
class SamplesTest {
    private static final Path SAMPLES = Path.of("src/test/resources/org/fieldfold/content/samples");
    private static final Pattern EXPECTED = Pattern.compile("(?:#|<!--) error(-below)?: ([a-z0-9-]+)");

    @TempDir
    Path temporary;

    @TestFactory
    List<DynamicTest> everySampleGivesItsFindingsAtItsLines() throws IOException {
        try (Stream<Path> files = Files.walk(SAMPLES)) {
            return files.filter(Files::isRegularFile).sorted().map(file ->
                    DynamicTest.dynamicTest(SAMPLES.relativize(file).toString(), () -> check(file))).toList();
        }
    }

    private void check(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        String kind = file.getParent().getFileName().toString();
        String path = kind.equals("crops") ? "crops.yaml" : kind + "/" + file.getFileName();
        Path folder = temporary.resolve(kind + file.getFileName());
        LoadedBase loaded = new Base(folder).with(path, bytes).load();
        TreeSet<String> found = new TreeSet<>();
        loaded.findings().stream().filter(finding -> finding.span().file().path().endsWith(path))
                .filter(finding -> !finding.rule().equals("unknown-reference"))
                .filter(finding -> !finding.rule().equals("note-without-figure"))
                .forEach(finding -> found.add("%03d %s".formatted(finding.span().line(), finding.rule())));
        TreeSet<String> expected = expected(new String(bytes, StandardCharsets.ISO_8859_1));
        assertFalse(expected.isEmpty(), "a sample expects something: " + file);
        assertEquals(String.join("\n", expected), String.join("\n", found), () -> loaded.findings().stream()
                .map(Base::shown).reduce("", (a, b) -> a + "\n" + b));
    }

    private static TreeSet<String> expected(String text) {
        TreeSet<String> expected = new TreeSet<>();
        String[] lines = text.split("\n");
        for (int i = 0; i < lines.length; i++) {
            Matcher comment = EXPECTED.matcher(lines[i]);
            while (comment.find()) {
                expected.add("%03d %s".formatted(i + (comment.group(1) == null ? 1 : 2), comment.group(2)));
            }
        }
        return expected;
    }
}
