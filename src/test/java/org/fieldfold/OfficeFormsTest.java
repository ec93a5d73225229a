package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.GuideForm;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Units;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.pdf.Press;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;
import org.fieldfold.translation.TranslatedBase;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.PrintMeFirst;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Large print and posters that an office asks for say what its foldouts say, and whom to call there. */
class OfficeFormsTest {
    private static ContentBase base;
    private static Press press;

    @BeforeAll
    static void load() throws IOException {
        base = BaseLoader.load(Path.of("content")).base().orElseThrow();
        Map<String, byte[]> figures = new HashMap<>(PrintMeFirst.figures());
        base.figures().values().forEach(figure -> figures.put(figure.value().id(), figure.value().bytes()));
        press = Press.of(figures);
    }

    /** One guide's forms at an office. */
    private static List<Form> forms(ContentBase said, String id, String guide, String language, Optional<Units> units,
            List<GuideForm> asked) {
        Placed<Office> placed = said.offices().get(id);
        Office own = placed.value();
        Office asking = new Office(own.id(), own.name(), own.county(), own.languages(), own.paper(), own.flip(), units,
                own.station(), List.of(guide), asked, own.leaveOut(), own.notes(), own.contact(), own.requests());
        return Forms.of(new Placed<>(asking, placed.spans()), "", said, new Calendars(said),
                Phrases.in(language), new PrintRoom(press, Kept.nothing()), false);
    }

    /** The words of each. */
    private static Map<String, String> words(String id, String guide, String language, Optional<Units> units,
            List<GuideForm> asked) {
        return forms(TranslatedBase.in(base, language), id, guide, language, units, asked).stream()
                .collect(Collectors.toMap(Form::path, form -> form.job().guide().panels().stream()
                                .flatMap(panel -> panel.marks().stream())
                                .filter(Mark.Words.class::isInstance).map(mark -> ((Mark.Words) mark).text())
                                .collect(Collectors.joining()).replaceAll("\\s+", " ")));
    }

    private static Map<String, String> both(String id, String guide, String language) {
        return words(id, guide, language, Optional.empty(), List.of(GuideForm.LARGE_PRINT, GuideForm.POSTER));
    }

    @Test
    void theOfficeIsCalledAndNotThePublisher() {
        String publisher = base.edition().value().contact().phone();
        Map<String, String> forms = both("tarnfield", "onion-family", "en");
        assertEquals(java.util.Set.of("onion-family.en.letter.large-print.pdf", "onion-family.en.letter.poster.pdf"),
                forms.keySet());
        forms.forEach((name, words) -> {
            assertTrue(words.contains("Call 555-0122"), name + ": " + words);
            assertFalse(words.contains(publisher), name + ": " + words);
        });
        assertTrue(both("tarnfield", "onion-family", "es").get("onion-family.es.letter.large-print.pdf")
                .contains("Llame al 555-0122"));
    }

    /** Said at the office's own file, with guide and paper. */
    @Test
    void aPosterThatIsTooFullIsSaidToBeLeftOut(@TempDir Path folder) throws IOException {
        Path guide = FolderCopy.of(Path.of("content"), folder).resolve("guides/brassicas.yaml");
        Files.writeString(guide, Files.readString(guide).replace("entries: [",
                "entries: [swede-midge, cabbage-aphid, onion-thrips, "));
        List<Form> forms = forms(BaseLoader.load(folder).base().orElseThrow(), "saltmere", "brassicas", "en",
                Optional.empty(), List.of(GuideForm.LARGE_PRINT, GuideForm.POSTER));
        assertEquals(List.of("brassicas.en.a4.large-print.pdf"), forms.stream().map(Form::path).toList());
        Finding said = forms.get(0).findings().get(0);
        assertEquals(Severity.WARNING, said.severity());
        assertEquals("offices/saltmere.yaml", said.span().file().path().replaceFirst("^[^/]+/", ""));
        assertTrue(said.span().file().lineText(said.span().line()).startsWith("forms:"), said.span().place());
        assertTrue(said.message().contains("\"" + BaseLoader.load(folder).base().orElseThrow().guides().get("brassicas")
                .value().title() + "\" on one sheet of a4, found more than it holds"), said.message());
    }

    @Test
    void notesStandInLargePrintAndWhatIsLeftOutInNeither() {
        assertTrue(both("tarnfield", "onion-family", "en").get("onion-family.en.letter.large-print.pdf")
                .contains("Bring us a leaf with a window in it."));
        both("hazel-ridge", "sweet-corn", "en").forEach((name, words) ->
                assertTrue(words.contains("European corn borer") && !words.contains("Fall armyworm"), name + words));
    }

    @Test
    void onlyWhatIsAskedForIsMadeInLanguagesAndUnitsOfTheOffice() {
        assertEquals(Map.of(), words("tarnfield", "potato", "en", Optional.empty(), List.of()));
        assertEquals(Map.of(), both("saltmere", "potato", "es"));
        String metric = words("northmoor", "potato", "en", Optional.of(Units.METRIC), List.of(GuideForm.LARGE_PRINT))
                .get("potato.en.a4.large-print.pdf");
        assertTrue(metric.contains("10 °C") && !metric.contains("°F"), metric);
    }
}
