package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A draft is good YAML in which only values are missing: reading it says what is still to be written. */
class DraftTest {
    @TempDir
    Path base;

    @ParameterizedTest
    @ValueSource(strings = {"pest", "natural-enemy", "practice", "guide", "office"})
    void readingADraftSaysOnlyWhatIsToBeFilledIn(String kind) throws IOException {
        Set<String> empty = empty(Draft.of(kind, "new-one"));
        Draft brief = Draft.of(kind, "new-one", true);
        assertEquals(empty, empty(brief), "a short one asks for the same");
        assertTrue(brief.text().lines().count() < Draft.of(kind, "new-one").text().lines().count());
    }

    /** What reading a draft finds empty, each key as its line has it. */
    private Set<String> empty(Draft draft) throws IOException {
        Path file = base.resolve("content").resolve(draft.path());
        Files.createDirectories(file.getParent());
        Files.writeString(file, draft.text(), StandardCharsets.UTF_8);
        Files.copy(Path.of("content/edition.yaml"), base.resolve("content/edition.yaml"),
                StandardCopyOption.REPLACE_EXISTING);
        List<Finding> findings = BaseLoader.load(base.resolve("content")).findings().stream()
                .filter(finding -> finding.span().file().path().endsWith("new-one.yaml")).toList();
        Set<String> rules = findings.stream().map(Finding::rule)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of("empty-value"), rules, findings.toString());
        return findings.stream().map(finding -> finding.span().file().lineText(finding.span().line()).strip())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everyWordOfAVocabularyIsThere() {
        String text = Draft.of("pest", "x").text().replaceAll("\\n *# *", " ");
        for (String word : List.of("growing-point", "distortion", "light-trap", "row-length",
                "interval-table", "elsewhere")) {
            assertTrue(text.contains(word), word);
        }
    }

    @Test
    void whatCannotBeDraftedIsRefusedWithWhatCan() {
        String kind = assertThrows(IllegalArgumentException.class, () -> Draft.of("bug", "x")).getMessage();
        assertEquals("expected one of pest, natural-enemy, practice, guide, office, found 'bug'", kind);
        assertThrows(IllegalArgumentException.class, () -> Draft.of("pest", "../x"));
        assertThrows(IllegalArgumentException.class, () -> Draft.of("pest", "Leek Moth"));
    }
}
