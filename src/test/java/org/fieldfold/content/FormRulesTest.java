package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every rule has its explanation page, and the samples on it do what the page says. */
class FormRulesTest {
    private static final Path PAGES = Path.of("src/main/resources/org/fieldfold/check/rules");
    private static final Pattern SAMPLE = Pattern.compile(
            "## A sample that (fails|passes)\n\n```[a-z]+ ([^\n]+)\n(.*?)\n```\n", Pattern.DOTALL);
    /** What no sample on a page can show; their tests are in the class that is named. */
    private static final Set<FormRule> WITHOUT_SAMPLE = Set.of(
            FormRule.MISSING_FILE, FormRule.FILE_TOO_LARGE, FormRule.LINK_LEAVES_FOLDER, // FolderTest
            FormRule.UNEXPECTED_FILE, // FolderTest
            FormRule.NOT_UTF8, // MessagesTest
            FormRule.NOT_AN_IMAGE, // DrawingsTest
            FormRule.PARAGRAPH_TOO_LONG, FormRule.TOO_MANY_FILES, FormRule.UNREADABLE_FILE, // HardLimitsTest
            FormRule.BAD_VALUE); // HardLimitsTest

    @TempDir
    Path temporary;

    @ParameterizedTest
    @EnumSource(FormRule.class)
    void isExplained(FormRule rule) throws IOException {
        String page = Files.readString(PAGES.resolve(rule.id() + ".md"));
        assertTrue(page.startsWith("# " + rule.id() + "\n\n"), page);
        assertTrue(page.contains("\n## Why it matters\n\n") && page.contains("\n## How to mend it\n\n"),
                page);
        Matcher samples = SAMPLE.matcher(page);
        boolean fails = false;
        while (samples.find()) {
            boolean expected = samples.group(1).equals("fails");
            List<Finding> findings = new Base(temporary.resolve(samples.group(1)))
                    .with(samples.group(2), samples.group(3) + "\n").load().findings();
            Set<String> rules = findings.stream().map(Finding::rule)
                    .collect(java.util.stream.Collectors.toSet());
            // what only the shortness of the sample brings along is not the page's business
            rules.removeIf(other -> !expected && other.equals("figure-without-note"));
            assertEquals(expected, rules.contains(rule.id()), () -> rule.id() + " " + samples.group(1) + ": "
                    + findings.stream().map(Base::shown).toList());
            assertTrue(expected || rules.isEmpty(), () -> rule.id() + " passes: " + findings);
            fails |= expected;
        }
        assertEquals(!WITHOUT_SAMPLE.contains(rule), fails, "has a sample that fails");
    }

    @ParameterizedTest
    @EnumSource(FormRule.class)
    void isSummedUpInALine(FormRule rule) {
        assertFalse(rule.summary().endsWith(".") || rule.summary().contains("\n"), rule.summary());
        assertEquals(Optional.of(rule), FormRule.byId(rule.id()));
    }
}
