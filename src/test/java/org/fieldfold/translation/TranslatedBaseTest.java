package org.fieldfold.translation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.fieldfold.check.Rulebook;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.handbook.Handbook;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.prose.Prose;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TranslatedBaseTest {
    private static final String BEETLE = "pests/potato-beetle.yaml";

    @TempDir
    Path folder;
    private SampleBase sample;

    @BeforeEach
    void translateTwoTexts() throws IOException {
        sample = SampleBase.in(folder.resolve("content"));
        sample.draft();
        sample.translate(BEETLE, "names/common", "catarinita de la papa");
        sample.translate(BEETLE, "controls/0/measure", "Siembre papa en otro campo.");
    }

    private static String measure(PestEntry pest, int i) {
        Control control = pest.controls().get(i);
        Prose prose = control instanceof Control.Cultural cultural ? cultural.measure().pocket()
                : ((Control.Exclusion) control).measure().pocket();
        return prose.words();
    }

    private static List<String> rules(ContentBase base, String rule) {
        return Rulebook.check(base, base.edition().value().issued()).stream()
                .filter(finding -> finding.rule().equals(rule)).map(Finding::message).toList();
    }

    @Test
    void theBaseInItsOwnLanguageIsTheBase() throws IOException {
        ContentBase base = sample.load();
        assertSame(base, TranslatedBase.in(base, "en"));
    }

    @Test
    void textsStandInTheLanguageAndFactsStay() throws IOException {
        ContentBase base = sample.load();
        PestEntry was = base.pests().get("potato-beetle").value();
        Placed<PestEntry> placed = TranslatedBase.in(base, "es").pests().get("potato-beetle");
        PestEntry said = placed.value();
        assertEquals("catarinita de la papa", said.names().common());
        assertEquals("Siembre papa en otro campo.", measure(said, 0));
        assertEquals(was.names().scientific(), said.names().scientific());
        assertEquals(was.thresholds().get(0).value(), said.thresholds().get(0).value());
        assertEquals(was.controls().stream().map(Control::tier).toList(),
                said.controls().stream().map(Control::tier).toList());
        assertEquals("content/es/pests/potato-beetle.yaml", placed.at("controls", 0, "measure").file().path());
        assertEquals("content/pests/potato-beetle.yaml", placed.at("controls", 1, "measure").file().path());
    }

    @Test
    void aMissingTextStandsInTheBaseLanguageAndSaysSo() throws IOException {
        ContentBase said = TranslatedBase.in(sample.load(), "es");
        PestEntry pest = said.pests().get("potato-beetle").value();
        assertEquals("[en] Cover from planting on.", measure(pest, 1));
        assertEquals("[en] beetle", pest.names().kind());
        List<Run> runs = ((Control.Exclusion) pest.controls().get(1)).measure().pocket().line();
        assertEquals(List.of("", "en"), runs.stream().map(Run::language).toList());
    }

    @Test
    void aChangeOfTheBaseMakesOneTextDueAndShowsTheBaseAgain() throws IOException {
        sample.change(BEETLE, "Move potatoes to another field.", "Move potatoes 400 m away.");
        ContentBase base = sample.load();
        assertEquals("[en] Move potatoes 400 m away.",
                measure(TranslatedBase.in(base, "es").pests().get("potato-beetle").value(), 0));
        List<String> due = rules(base, "translation-due");
        assertEquals(1, due.size());
        String old = new BaseText("", "Move potatoes to another field.", false, false,
                base.edition().at("title")).hash();
        String now = new BaseText("", "Move potatoes 400 m away.", false, false,
                base.edition().at("title")).hash();
        for (String part : List.of(old, now, "Move potatoes 400 m away.", "Siembre papa en otro campo.")) {
            assertTrue(due.get(0).contains(part), due.get(0));
        }
    }

    /** As a translator goes about it: the command again, the new hash, done. */
    @Test
    void theWorkingFileKeepsWhatIsThereAndShowsWhatIsDue() throws IOException {
        sample.change(BEETLE, "Move potatoes to another field.", "Move potatoes 400 m away.");
        sample.draft();
        String file = sample.read("es/" + BEETLE);
        assertTrue(file.contains("catarinita de la papa") && file.contains("Siembre papa en otro campo."), file);
        int at = file.indexOf("# TO DO: the base has changed; its text is now ");
        assertTrue(at > 0, file);
        String now = file.substring(at).split(" is now ")[1].substring(0, 8);
        String old = file.substring(file.indexOf("  of: ", at) + 6).substring(0, 8);
        sample.change("es/" + BEETLE, old, now);
        sample.translate(BEETLE, "controls/0/measure", "Siembre papa a 400 m de ahí.");
        assertEquals(List.of(), rules(sample.load(), "translation-due"));
        sample.draft();
        String again = sample.read("es/" + BEETLE);
        sample.draft();
        assertEquals(again, sample.read("es/" + BEETLE), "a second run changes nothing");
        assertFalse(again.contains("the base has changed"), again);
    }

    @Test
    void aReorderedListKeepsItsTranslations() throws IOException {
        sample.change(BEETLE, "  - tier: 1\n    practice: rotation\n    measure: Move potatoes to another field.\n",
                "  - tier: 1\n    measure: Rake up the vines.\n"
                        + "  - tier: 1\n    practice: rotation\n    measure: Move potatoes to another field.\n");
        PestEntry pest = TranslatedBase.in(sample.load(), "es").pests().get("potato-beetle").value();
        assertEquals("[en] Rake up the vines.", measure(pest, 0));
        assertEquals("Siembre papa en otro campo.", measure(pest, 1));
    }

    @Test
    void theHandbookSaysWhichWordsAreInAnotherLanguageAndLeadsToThatHandbook() throws IOException {
        ContentBase said = TranslatedBase.in(sample.load(), "es");
        String page = Handbook.write(said, Phrases.in("es"), false).stream()
                .filter(file -> file.path().equals("handbook/es/potato-beetle.html"))
                .map(file -> new String(file.bytes(), StandardCharsets.UTF_8)).collect(Collectors.joining());
        assertTrue(page.contains("<html lang=\"es\">"), page);
        assertTrue(page.contains("Siembre papa en otro campo."), page);
        assertTrue(page.contains("[en] <span lang=\"en\">Cover from planting on.</span>"), page);
        assertTrue(page.contains("href=\"../en/potato-beetle.html\" hreflang=\"en\" lang=\"en\">English</a>"),
                page);
    }
}
