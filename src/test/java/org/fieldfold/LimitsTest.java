package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import org.fieldfold.content.TableKind;
import org.fieldfold.report.FindingFormat;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an edition and a table from outside may not say: the last that may stand, and the first that may not. */
class LimitsTest {
    private static final Path SAMPLE = Path.of("src/test/resources/org/fieldfold/check/base/edition.yaml");

    @TempDir
    Path folder;

    private List<String> findings(String line, String instead) throws IOException {
        Path content = Files.createDirectories(folder.resolve("content"));
        String edition = Files.readString(SAMPLE);
        Files.writeString(content.resolve("edition.yaml"), edition.replaceAll("(?m)^" + line + ": .*$", instead));
        return Compiler.check(content, Optional.empty()).findings().stream().map(finding -> finding.span().line() + ":"
                + finding.span().column() + " " + finding.message() + " [" + finding.rule() + "] " + finding.hint())
                .filter(shown -> !shown.contains("[edition-dates]")).toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
        "[en]|",
        "[es, en]|",
        "[xx]|LINE:13 expected a language that sheets can be written in, each once, found 'xx' [unknown-word] write en "
                + "or es, or take it out",
        "[en, xx]|LINE:17 expected a language that sheets can be written in, each once, found 'xx' [unknown-word] "
                + "write en or es, or take it out",
        "[en, en]|LINE:17 expected a language that sheets can be written in, each once, found 'en' [unknown-word] "
                + "write en or es, or take it out",
        "[../en]|LINE:13 expected a language that sheets can be written in, each once, found '../en' [unknown-word] "
                + "write en or es, or take it out",
        "[]|LINE:12 expected at least one language, found none [unknown-word] write languages: [en]"})
    void languages(String written, String expected) throws IOException {
        int line = Files.readAllLines(SAMPLE).indexOf("languages: [en]") + 1;
        assertEquals(expected == null ? List.of() : List.of(expected.replace("LINE", String.valueOf(line))),
                findings("languages", "languages: " + written).stream()
                        .filter(shown -> shown.contains("[unknown-word]")).toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"https://handbook.example/2027|true", "http://handbook.example|true",
        "handbook.example/2027|false", "javascript:alert(1)|false", "mailto:a@b.example|false",
        "file:///etc/hosts|false", "data:text/html,x|false", "'https://hand book.example'|false", "https://|false",
        "//handbook.example|false",
        "'\"https://handbook.example/\\u202e7202\"'|false"})
    void theAddressOfTheHandbook(String written, boolean fits) throws IOException {
        List<String> found = findings("handbook", "handbook: " + Matcher.quoteReplacement(written)).stream()
                .filter(shown -> shown.contains("[link-scheme]") || shown.contains("[control-character]")).toList();
        assertEquals(fits, found.isEmpty(), found.toString());
        if (!fits && !written.contains("u202e")) {
            assertEquals("expected the address of a page with https: or http:, found '" + written + "' [link-scheme] "
                    + "write it whole, as in https://handbook.example/2027",
                    found.get(0).replaceFirst("^[0-9]+:11 ", ""));
        }
    }

    /** A rule may have something to say of each of its entries, and print the line each time. */
    @Test
    void aGuideOfManyEntriesOnOneLineIsCheckedAndSaidInBoundedTime() throws IOException {
        Path content = Files.createDirectories(folder.resolve("content"));
        Files.copy(SAMPLE, content.resolve("edition.yaml"));
        Files.writeString(Files.createDirectories(content.resolve("guides")).resolve("long.yaml"),
                "title: A\npurpose: B\naudience: garden\nscheme: accordion-4\nentries: ["
                        + "a,".repeat(49_000) + "]\n");
        assertTimeoutPreemptively(Duration.ofSeconds(100), () -> {
            List<Finding> findings = Compiler.check(content, Optional.empty()).findings();
            assertTrue(findings.size() > 9_000 && findings.size() < 10_100, "findings: " + findings.size());
            assertTrue(FindingFormat.TEXT.write(findings, false).length() < 10_000_000);
        });
    }

    @Test
    void aTableOfFiveMebibytesIsReadAndOneByteMoreIsNot() throws Exception {
        Path content = Files.createDirectories(folder.resolve("content"));
        Files.copy(SAMPLE, content.resolve("edition.yaml"));
        Path table = folder.resolve("table.csv");
        try (RandomAccessFile file = new RandomAccessFile(table.toFile(), "rw")) {
            file.setLength(5 << 20);
            assertFalse(Spreadsheets.edits(content, TableKind.MATERIALS, table, false).refusals().isEmpty());
            file.setLength((5 << 20) + 1);
        }
        assertEquals("expected a table of at most 5 MiB, found more in " + table + "; divide it into several, each "
                + "with the first row", assertThrows(Editions.Refused.class, () -> Spreadsheets.edits(content,
                        TableKind.MATERIALS, table, true)).getMessage());
        assertThrows(Editions.Refused.class, () -> Spreadsheets.editTranslations(content, "es", table, true));
    }
}
