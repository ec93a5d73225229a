package org.fieldfold.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fieldfold.Compiler;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every rule is registered once, explained, and shown by two samples: one in which it finds the marked lines
 * and no others, and a near miss in which nothing is found. A sample is a folder {@code samples/<rule>/fail}
 * or {@code pass} with only those files that differ from {@code base}.
 */
class RulebookTest {
    private static final Path SAMPLES = Sample.RESOURCES.resolve("samples");

    @TempDir
    private Path folder;

    static Stream<Rule> rules() {
        return Rulebook.rules().stream();
    }

    @Test
    void everyRuleHasSamplesAndEverySampleARule() {
        List<String> ids = rules().map(Rule::id).toList();
        assertEquals(ids.size(), new TreeSet<>(ids).size(), "expected each id once, found " + ids);
        assertEquals(List.copyOf(new TreeSet<>(ids)), Sample.folders(SAMPLES));
        ids.forEach(id -> assertEquals(List.of("fail", "pass"), Sample.folders(SAMPLES.resolve(id)), id));
    }

    @Test
    void everyRuleIsRegistered() {
        assertEquals(new TreeSet<>(new ClassFileImporter().importPackages("org.fieldfold.check").stream()
                        .filter(type -> type.isAssignableTo(Rule.class) && !type.isInterface())
                        .map(JavaClass::getSimpleName).toList()),
                new TreeSet<>(rules().map(rule -> rule.getClass().getSimpleName()).toList()));
    }

    @Test
    void theBaseOfAllSamplesHasNoFindings() throws IOException {
        Sample base = Sample.laid(Sample.RESOURCES.resolve("base"), folder);
        assertEquals(List.of(), base.foundByAll());
        assertEquals(List.of(), base.marked());
    }

    @ParameterizedTest
    @MethodSource("rules")
    void isExplained(Rule rule) {
        String page = Rulebook.explain(rule.id()).orElseThrow();
        List<String> parts = List.of("# " + rule.id() + "\n\n", "\n\nSeverity: ", "\n\n## Why it matters\n\n",
                "\n\n## A sample that fails\n\n```yaml\n", "\n\n## A sample that passes\n\n```yaml\n",
                "\n\n## How to mend it\n\n");
        int at = 0;
        for (String part : parts) {
            int next = page.indexOf(part, at);
            assertTrue(next >= 0 && (at > 0 || next == 0), rule.id() + ": expected '" + part.strip()
                    + "' in its place");
            at = next + part.length() - 2;
        }
        assertTrue(Rulebook.summary(rule.id()).orElseThrow().endsWith("."), rule.id());
    }

    @Test
    void everyPageBelongsToARule() throws IOException {
        try (Stream<Path> pages = Files.list(Path.of("src/main/resources/org/fieldfold/check/rules"))) {
            assertEquals(List.copyOf(Compiler.rules().keySet()),
                    pages.map(page -> page.getFileName().toString()
                    .replaceFirst("\\.md$", "")).sorted().toList());
        }
        assertEquals(Optional.empty(), Rulebook.explain("no-such-rule"));
        assertEquals(Optional.empty(), Rulebook.explain("../rules/no-caution"));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void findsTheMarkedLinesAndNoOthers(Rule rule) throws IOException {
        Sample sample = Sample.laid(SAMPLES.resolve(rule.id()).resolve("fail"), folder);
        List<Finding> found = sample.found(rule);
        assertFalse(found.isEmpty(), rule.id());
        assertEquals(sample.marked(), Sample.lines(found), rule.id());
        found.forEach(RulebookTest::saysWhatWasExpectedAndFound);
        String page = Rulebook.explain(rule.id()).orElseThrow();
        String severity = page.substring(page.indexOf("\nSeverity: "), page.indexOf("\n\n## Why"));
        found.forEach(finding -> assertTrue(severity.contains(finding.severity().word()), rule.id()
                + " finds an " + finding.severity().word() + ", its page says" + severity));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void letsANearMissPass(Rule rule) throws IOException {
        Sample sample = Sample.laid(SAMPLES.resolve(rule.id()).resolve("pass"), folder);
        assertEquals(List.of(), sample.foundByAll(), rule.id());
        assertEquals(List.of(), sample.marked(), rule.id());
    }

    /** Lower case, no full stop, both sides of the matter, and a way to mend it. */
    private static void saysWhatWasExpectedAndFound(Finding finding) {
        String message = finding.message();
        assertTrue(message.matches("[^\\p{Lu}].*[^.!]"),
                "expected a message that begins in lower case and has no full "
                + "stop, found " + message);
        assertTrue(message.contains("expected ") && message.contains("found ")
                || message.contains("differently"), "expected what was expected and what was found, found "
                        + message);
        assertFalse(finding.hint().isBlank(), "expected a hint, found none: " + finding);
        assertFalse(finding.hint().endsWith("."), finding.hint());
    }
}
