package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.fieldfold.entry.Translation;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files of translations, well formed and not. */
class TranslationReadingTest {
    private static final String SOUND = """
            names/common:
              # Colorado potato beetle
              of: 01234567
              text: escarabajo de la papa
            stages/adult/looks/handbook:
              of: 89abcdef
              text: |
                Redondo, con *rayas* negras.

                Otro párrafo.
            year:
              of: 00000000
              text:
            """;

    @TempDir
    Path folder;

    private List<String> rules(String text) {
        return new Base(folder).with("es/pests/x.yaml", text).load().findings().stream()
                .filter(finding -> finding.span().file().path().startsWith("content/es/"))
                .map(Finding::rule).distinct().toList();
    }

    @Test
    void textsAreReadWithTheirHashesAndMarkdown() {
        Translation spanish = new Base(folder).with("es/pests/x.yaml", SOUND).load().base().orElseThrow()
                .translations().get("es");
        List<Translation.Passage> passages = spanish.files().get("pests/x").passages();
        assertEquals(List.of("names/common", "stages/adult/looks/handbook", "year"),
                passages.stream().map(Translation.Passage::path).toList());
        assertEquals(List.of("01234567", "89abcdef", "00000000"),
                passages.stream().map(Translation.Passage::of).toList());
        assertEquals(2, passages.get(1).words().orElseThrow().passages().size());
        assertTrue(passages.get(2).words().isEmpty(), "not translated yet");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "- a | wrong-type", "a: b | wrong-type", "a: {text: b} | missing-key",
        "a: {of: x, txt: b} | unknown-key", "a: {of: x, text: [b]} | wrong-type",
        "a: {of: x, text: <b>x</b>} | raw-html", "a: {of: x, text: \"[x](javascript:y)\"} | link-scheme",
        "a: {of: x, text: \"[x](entry:nowhere)\"} | unknown-reference"})
    void whatIsNotInFormIsSaid(String text, String rule) {
        assertEquals(List.of(rule), rules(text + "\n"));
    }

    @Test
    void aPathStandsOnce() {
        assertEquals(List.of("duplicate-key"), rules("a: {of: x, text: b}\na: {of: x, text: c}\n"));
    }

    @Test
    void aFileThatIsCutAnywhereGivesFindingsAndNothingWorse() {
        for (int end = 0; end < SOUND.length(); end += 3) {
            rules(SOUND.substring(0, end));
            new Base(folder).with("es/glossary.yaml", ("terms:\n  - base: [row cover]\n    term: cubierta\n"
                    + "    avoid: [manta]\n").substring(0, Math.min(end, 60))).load();
        }
    }

    @Test
    void onlyFilesOfTheBaseHaveAPlaceInTheFolderOfALanguage() {
        assertEquals(List.of("content/es/notes.txt", "content/es/pest"),
                new Base(folder).with("es/notes.txt", "x").with("es/pest/x.yaml", "a: {of: x}\n")
                        .with("es/pests/x.yaml", SOUND).load().findings().stream()
                        .filter(finding -> finding.rule().equals("unexpected-file"))
                        .map(finding -> finding.span().file().path()).toList());
    }
}
