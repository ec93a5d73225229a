package org.fieldfold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fieldfold.Compiler;
import org.fieldfold.FolderCopy;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.ObjectMapper;

/** Runs commands in this process: what they print, and the exit statuses that the help promises. */
class CommandLineToolTest {
    @TempDir
    private Path folder;

    private Path content;
    private boolean interactive;

    private Desk.Run run(String... args) {
        return Desk.run((out, err) -> new Terminal(out, err, interactive, () -> 0), args);
    }

    @BeforeEach
    void copySoundBase() throws IOException {
        content = folder.resolve("content");
        FolderCopy.of(Desk.SOUND, content);
    }

    /** Takes the cautions out of an entry with insecticides. */
    private void breakIt() throws IOException {
        Path pest = content.resolve("pests/potato-beetle.yaml");
        Files.writeString(pest, Files.readString(pest)
                .replace("cautions:\n  - Never the same group twice running.\n", ""));
    }

    @Test
    void aSoundBaseGivesStatus0() {
        Desk.Run run = run("check", "--content", content.toString());
        assertEquals(new Desk.Run(0, "0 errors, 0 warnings, 0 notes\n", ""), run);
    }

    @Test
    void anErrorGivesStatus1AndItsPlace() throws IOException {
        breakIt();
        Desk.Run run = run("check", "--content", content.toString());
        assertEquals(1, run.status());
        assertTrue(run.out().startsWith("content/pests/potato-beetle.yaml:50:"), run.out());
        assertTrue(run.out().contains("[no-caution]") && run.out().contains("\n  hint: write one under 'cautions:'\n"),
                run.out());
        assertFalse(run.out().contains("\u001b"), "no colour when nobody is looking");
    }

    @Test
    void aWarningAloneGivesStatus0() throws IOException {
        Path sources = content.resolve("sources.yaml");
        Files.writeString(sources, Files.readString(sources)
                + "  - {id: old, authors: Nobody, title: Left over, standing: read}\n");
        Desk.Run run = run("check", "--content", content.toString());
        assertEquals(0, run.status());
        assertTrue(run.out().endsWith("0 errors, 1 warning, 0 notes\n"), run.out());
    }

    @Test
    void coloursWhenSomebodyIsLooking() throws IOException {
        breakIt();
        interactive = true;
        assertTrue(run("check", "--content", content.toString()).out()
                .contains("\u001b[1;31merror\u001b[0m"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--format=json", "--format=sarif", "--format=SARIF"})
    void otherFormsAreJson(String format) throws IOException {
        breakIt();
        Desk.Run run = run("check", "--content", content.toString(), format);
        assertEquals(1, run.status());
        assertTrue(new ObjectMapper().readTree(run.out()).isObject());
        assertTrue(run.out().contains("no-caution"));
    }

    @Test
    void junitIsXml() throws IOException {
        breakIt();
        assertTrue(run("check", "--content", content.toString(), "--format", "junit").out()
                .startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<testsuite "));
    }

    @Test
    void aBuildThatHasNothingToDoSaysSoAndTheSameFindings() throws IOException {
        breakIt();
        String[] compile = {"compile", "--proof", "--content", content.toString(), "--out",
            content.resolveSibling("out").toString()};
        Desk.Run first = run(compile);
        Desk.Run again = run(compile);
        assertTrue(first.err().contains("[no-caution]"), first.err());
        assertEquals(first.err(), again.err());
        assertEquals(first.status(), again.status());
        assertTrue(again.out().startsWith("nothing has changed since "), again.out());
        assertFalse(first.out().startsWith("nothing has changed since "), first.out());
    }

    @Test
    void asOfMakesEntriesStale() {
        String base = content.toString();
        assertEquals(0, run("check", "--content", base, "--as-of", "2028-02-07").status());
        Desk.Run later = run("check", "--content", base, "--as-of", "2028-06-01");
        assertEquals(1, later.status());
        assertTrue(later.out().contains("within 15 months before 2028-06-01, found 2026-12-01 "
                + "[revision-date]"),
                later.out());
        assertTrue(run("check", "--content", base, "--as-of", "2026-11-20").out()
                .contains("not after 2026-11-20"));
    }

    @Test
    void aMissingFolderGivesStatus3AndSaysSo() {
        for (String command : new String[] {"check", "compile"}) {
            Desk.Run run = run(command, "--content", folder.resolve("nowhere").toString());
            assertEquals(3, run.status(), run.err());
            assertEquals("", run.out());
            assertTrue(run.err().contains("expected a folder at " + folder.resolve("nowhere")
                    + ", found none"),
                    run.err());
        }
    }

    @Test
    void aFolderWithoutAnEditionIsAFindingAndNoCrash() throws IOException {
        Desk.Run run = run("check", "--content", Files.createDirectory(folder.resolve("empty")).toString());
        assertEquals(1, run.status());
        assertTrue(run.out().contains("[missing-file]"), run.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"chekc", "check --format=pdf", "check --as-of=soon", "check --nonsense",
            "check too many",
        "explain no-cautoin", "explain Q", "draft pest", "draft weed x"})
    void wrongUsageGivesStatus2AndSaysWhatIsWrong(String line) {
        Desk.Run run = run(line.split(" "));
        assertEquals(2, run.status(), run.out() + run.err());
        assertEquals("", run.out());
        assertFalse(run.err().isBlank());
        assertFalse(run.err().contains("\tat "), run.err());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        chekc                | expected one of check, compile, | found 'chekc'; did you mean 'check'?
        check --nonsense     | expected an option of 'fieldfold check' | found '--nonsense'
        check --format=pdf   | expected text, json, sarif or junit for --format | found 'pdf'
        check --as-of soon   | expected day against which | as in 2027-01-15 for --as-of, found 'soon'
        worklist more        | expected nothing more behind 'fieldfold worklist' | found 'more'
        sign leek-moth       | expected --by REVIEWER behind 'fieldfold sign' | found none
        table import foo x   | expected thresholds, materials, monitoring or translations | found 'foo'
        """)
    void wrongUsageSaysWhatWasExpectedAndFound(String line, String expected, String found) {
        String said = run(line.split(" ")).err().lines().findFirst().orElse("");
        assertTrue(said.startsWith("fieldfold: " + expected) && said.contains(found), said);
    }

    /** It would be deleted for a slip in another file. */
    @Test
    void aTranslationOfAnEntryThatCannotBeReadIsNotCalledOneOfNothing() throws IOException {
        run("draft", "translation", "es", "--content", content.toString());
        Path edition = content.resolve("edition.yaml");
        Files.writeString(edition, Files.readString(edition).replaceFirst("languages: \\[.*\\]",
                "languages: [en, es]"));
        Path pest = content.resolve("pests/potato-beetle.yaml");
        Files.writeString(pest, Files.readString(pest).replaceFirst("crops: \\[", "crops: potato, ["));
        String check = run("check", "--content", content.toString()).out();
        assertTrue(check.contains("content/pests/potato-beetle.yaml:"), check);
        assertFalse(check.contains("[translation-of-nothing]"), check);
    }

    @Test
    void explainPrintsThePageOfEveryRule() {
        Compiler.rules().keySet().forEach(rule -> {
            Desk.Run run = run("explain", rule);
            assertEquals(0, run.status(), rule);
            assertTrue(run.out().startsWith("# " + rule + "\n"), rule);
        });
    }

    @Test
    void explainWithoutANameListsAllRulesWithWhatTheyAsk() {
        Desk.Run run = run("explain");
        assertEquals(0, run.status());
        assertEquals(Compiler.rules().size(), run.out().lines().count());
        assertTrue(run.out().lines().allMatch(line -> line.matches("[a-z0-9-]+ {2,}\\S.*")), run.out());
        assertTrue(run.out().lines().anyMatch(line ->
                line.matches("tier-order +Measures stand in .* 1, then 2, then 3\\.")));
    }

    @Test
    void explainSuggestsTheNearestRule() {
        assertEquals("fieldfold: expected the name of a rule, found 'no-cautoin'; did you mean "
                + "'no-caution'?\n",
                run("explain", "no-cautoin").err().replace("\r\n", "\n"));
        assertTrue(run("explain", "qqqqqqqqq").err()
                .contains("'fieldfold explain' without a name lists them"));
    }

    @Test
    void helpNamesEveryCommandAndStatus() {
        Desk.Run run = run("--help");
        assertEquals(0, run.status());
        for (String word : new String[] {"check", "compile", "explain", "draft",
                "Exit status: 0 done, 1 findings"}) {
            assertTrue(run.out().contains(word), word + " in " + run.out());
        }
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 100), "lines fit a window: "
                + run.out());
        assertFalse(run.out().contains("\u001b"));
        assertEquals(run.out(), run().out(), "nothing to do shows the help");
        assertTrue(run("check", "--help").out().contains("text, json, sarif or junit"));
    }

    @Test
    void draftWritesAFileOnceAndCheckSaysWhatIsLeft() {
        Desk.Run first = run("draft", "pest", "leek-moth", "--content", content.toString());
        assertEquals(0, first.status(), first.err());
        assertTrue(Files.exists(content.resolve("pests/leek-moth.yaml")));
        assertTrue(first.out().contains("'fieldfold check leek-moth'") && first.out().contains("'entries:' of a guide"),
                first.out());
        Desk.Run again = run("draft", "pest", "leek-moth", "--content", content.toString());
        assertEquals(2, again.status());
        assertTrue(again.err().contains("exists"), again.err());
        Desk.Run check = run("check", "--content", content.toString());
        assertEquals(1, check.status());
        assertTrue(check.out().contains("content/pests/leek-moth.yaml:"), check.out());
    }

    @Test
    void checkSaysOnlyWhatIsAskedForAndCountsTheRest() throws IOException {
        breakIt();
        run("draft", "pest", "leek-moth", "--content", content.toString());
        String base = content.toString();
        Desk.Run draft = run("check", "leek-moth", "--content", base);
        assertEquals(1, draft.status());
        assertFalse(draft.out().contains("potato-beetle.yaml:"), draft.out());
        assertTrue(draft.out().endsWith("\nin other files: 1 error, 0 warnings, 0 notes\n"), draft.out());
        assertTrue(draft.out().contains("times [empty-value]\n    "
                + "line 6  common:  expected a text, found nothing\n"),
                draft.out());
        Desk.Run sound = run("check", "guides/potato.yaml", "--content", base);
        assertEquals(0, sound.status(), "another file's errors are another's: " + sound.out());
        Desk.Run unknown = run("check", "leek-mouth", "--content", base);
        assertEquals(2, unknown.status());
        assertEquals("fieldfold: expected an id or a file of " + base + ", found 'leek-mouth'",
                unknown.err().strip());
        String all = run("check", "--content", base).out();
        assertTrue(all.indexOf("[no-caution]") >= 0
                && all.contains("errors stand in\n  content/pests/leek-moth.yaml  "),
                all);
    }

    @Test
    void draftWritesAndKeepsTheWorkingFilesOfATranslator() throws IOException {
        Desk.Run first = run("draft", "translation", "es", "guides/potato", "--content", content.toString());
        assertEquals(0, first.status(), first.err());
        Path file = content.resolve("es/guides/potato.yaml");
        assertEquals(file + System.lineSeparator(), first.out());
        Files.writeString(file, Files.readString(file).replaceFirst("\n  text:\n", "\n  text: Papas\n"));
        run("draft", "translation", "es", "--content", content.toString());
        assertTrue(Files.readString(file).contains("\n  # Potatoes\n"), Files.readString(file));
        assertTrue(Files.readString(file).contains("\n  text: Papas\n"), Files.readString(file));
        assertEquals("", run("draft", "translation", "es", "--content", content.toString()).out());
        assertEquals(2, run("draft", "translation", "es", "guides/potatos", "--content",
                content.toString()).status());
        assertEquals(2, run("draft", "translation", "Spanish", "--content", content.toString()).status());
    }
}
