package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What people read, to the letter. */
class MessagesTest {
    private static final String PRACTICE = """
            name: Row cover
            tier: 2
            kind: row-cover
            summary: Cover on hoops.
            """;

    @TempDir
    Path temporary;

    private List<String> practice(String text) {
        return new Base(temporary).with("practices/row-cover.yaml", text).findings();
    }

    private List<String> practiceAnd(String more) {
        return practice(PRACTICE + more);
    }

    @Test
    void aSoundBaseGivesNoFinding() {
        assertEquals(List.of(), practice(PRACTICE));
    }

    @Test
    void unknownKeyNamesTheNearest() {
        assertEquals(List.of("content/practices/row-cover.yaml:5:1: error: expected one of the keys name, "
                + "tier, kind, "
                + "summary, steps, watch, irrigation, ventilation, weeds, nets, tunnel, "
                + "border, per-area, sources, revised, reviser, carried-over, signed-facts, "
                + "signed-with, "
                + "found 'ventilaton' "
                + "[unknown-key] hint: did you mean 'ventilation'?"),
                        practiceAnd("ventilaton: Open both ends.\n"));
    }

    @Test
    void missingKeySaysWhatItIsFor() {
        assertEquals(List.of("content/practices/row-cover.yaml:1:1: error: expected the key 'summary', "
                + "found none "
                + "[missing-key] hint: add 'summary: …' (what it is and what it is good for)"),
                practice(PRACTICE.replaceAll("summary.*\n", "")));
    }

    @Test
    void unknownWordNamesTheNearest() {
        assertEquals(List.of("content/practices/row-cover.yaml:3:7: error: expected one of rotation, "
                + "sanitation, timing, "
                + "variety, trap-crop, row-cover, insect-net, low-tunnel, high-tunnel-screen, "
                + "conserve-enemies, "
                + "release-enemies, mulch, clean-stock, mechanical, found 'row_cover' [unknown-word] "
                + "hint: did you mean "
                + "'row-cover'?"), practice(PRACTICE.replace("kind: row-cover", "kind: row_cover")));
    }

    @Test
    void aDateThatIsNone() {
        assertEquals(List.of("content/practices/row-cover.yaml:5:10: error: expected a date as in "
                + "2026-11-30, found "
                + "'2026-02-30' [bad-date] hint: there is no such day; check month and day"),
                practiceAnd("revised: 2026-02-30\n"));
    }

    @Test
    void anUnknownReviserAndSource() {
        assertEquals(List.of(
                "content/practices/row-cover.yaml:5:11: error: expected the id of a source, found "
                        + "'extension-1999' "
                        + "[unknown-reference] hint: add a source with this id, or take the reference out",
                "content/practices/row-cover.yaml:6:10: error: expected the id of a reviewer, found 'averi' "
                        + "[unknown-reference] hint: did you mean 'avery'?"),
                practiceAnd("sources: [extension-1999]\nreviser: averi\n"));
    }

    @Test
    void duplicateKeySaysWhereTheFirstStands() {
        assertEquals(List.of("content/practices/row-cover.yaml:5:1: error: expected the key 'tier' once, "
                + "found it again; "
                + "it stands first on line 2 [duplicate-key] hint: keep one of the two"),
                        practiceAnd("tier: 2\n"));
    }

    @Test
    void aColonInAText() {
        assertEquals(List.of("content/practices/row-cover.yaml:1:7: error: expected one value, found a "
                + "second colon and "
                + "space in it [unquoted-colon] hint: put the whole value in double quotes"),
                practice(PRACTICE.replace("Row cover", "Cutworm: black")));
    }

    @Test
    void aSwallowedComment() {
        assertEquals(List.of("content/practices/row-cover.yaml:6:7: error: expected the text to go on, "
                + "found ' #', behind "
                + "which nothing is read [swallowed-comment] hint: put the whole value in double quotes; "
                + "for a comment "
                + "write two spaces, '#' and a space"), practiceAnd("steps:\n- see #3 now\n"));
    }

    @Test
    void tabsAreCountedOnce() {
        assertEquals(List.of("content/practices/row-cover.yaml:6:1: error: expected spaces before the "
                + "first word, found a "
                + "tab, and on 1 more line [tab-indent] hint: indent with two spaces; let the editor turn "
                + "tabs into "
                + "spaces"), practiceAnd("steps:\n\t- Set the hoops.\n\t- Cover them.\n"));
    }

    @Test
    void bytesThatAreNotUtf8HaveAPlace() {
        byte[] latin = PRACTICE.replace("Row cover", "Röw cöver").getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(List.of(
                "content/practices/row-cover.yaml:1:8: error: expected UTF-8, found the byte 0xf6 at byte "
                        + "7 of the file "
                        + "[not-utf8] hint: save the file as UTF-8 and type this character again",
                "content/practices/row-cover.yaml:1:12: error: expected UTF-8, found the byte 0xf6 at "
                        + "byte 11 of the file "
                        + "[not-utf8] hint: save the file as UTF-8 and type this character again"),
                new Base(temporary).with("practices/row-cover.yaml", latin).findings());
    }

    @Test
    void columnsAreCountedAsAReaderCounts() {
        // two characters outside the basic plane stand before the slip
        assertEquals(List.of("content/practices/row-cover.yaml:1:14: error: expected one of the keys "
                + "name, tier, kind, "
                + "summary, steps, watch, irrigation, ventilation, weeds, nets, tunnel, "
                + "border, per-area, sources, revised, reviser, carried-over, signed-facts, "
                + "signed-with, "
                + "found 'nam' "
                + "[unknown-key] hint: did you mean 'name'?"),
                practice("{name: \"\uD83D\uDC1B\uD83D\uDC1E\", nam: x, tier: 2, kind: row-cover, summary: "
                        + "Cover.}\n"));
    }

    @Test
    void allProblemsAreReportedInOneRun() {
        List<Finding> findings = new Base(temporary)
                .with("practices/a.yaml", "name: A: b\ntier: two\nkind: x\n")
                .with("practices/b.yaml", "")
                .with("guides/c.yaml", "title: [\n").load().findings();
        String rules = findings.stream().map(Finding::rule).collect(Collectors.joining(" "));
        assertEquals("unclosed-bracket unquoted-colon bad-number unknown-word empty-file",
                rules.replace(" missing-key", "")
                .replace("missing-key ", ""));
        assertTrue(findings.stream().sorted().toList().equals(findings), "sorted");
    }
}
