package org.fieldfold.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldException;
import org.fieldfold.fold.FoldLine;
import org.fieldfold.fold.FoldScheme;
import org.fieldfold.fold.FoldSchemes;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.SetPanel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a helper needs while somebody waits: the guide by crop or pest, paper, edge, fold, and whom to call. */
class CounterPageTest {
    static Stream<FoldScheme> schemes() {
        return FoldSchemes.all().stream();
    }

    private static List<String> all(String pattern, String text) {
        List<String> found = new ArrayList<>();
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    /** The folder's words speak of marks by their numbers: each is drawn, and none that they do not speak of. */
    @ParameterizedTest
    @MethodSource("schemes")
    void theDrawingOfAFoldHasEveryMarkThatItsStepsName(FoldScheme scheme) {
        for (FlipEdge flip : FlipEdge.values()) {
            String page;
            try {
                page = SampleCounter.page(scheme, flip, "en");
            } catch (FoldException unfit) {
                continue;
            }
            assertEquals(new TreeSet<>(all("<li>Mark (\\d+):", page)),
                    new TreeSet<>(all("<text class=\"mark\"[^>]*>(\\d+)<", page)), scheme.id() + " " + flip);
            assertMarksStandWhereTheyArePrinted(scheme, flip, page);
            assertEquals(List.of("#fold-a"), all("href=\"(#[^\"]+)\"", page));
            assertEquals(1, all("id=\"(fold-a)\"", page).size());
            assertTrue(page.contains(scheme.oneSided() ? "letter · one side only · "
                    : "letter · both sides, " + (flip == FlipEdge.SHORT ? "short" : "long") + " edge · "), page);
        }
    }

    /** {@link FoldingWordsTest} folds by the marks of the printed page: the drawing has them where that page has. */
    private static void assertMarksStandWhereTheyArePrinted(FoldScheme scheme, FlipEdge flip, String page) {
        Imposition sheet = Imposition.of(scheme, Paper.LETTER, flip);
        Map<String, Long> printed = new TreeMap<>();
        sheet.foldLines().stream().filter(line -> line.side() == FoldingWords.up(sheet)
                && line.move() != FoldLine.Move.ALONG && line.x1() == line.x2())
                .forEach(line -> printed.put(String.valueOf(line.step()), Math.round(line.x1())));
        Map<String, Long> drawn = new TreeMap<>();
        Matcher mark = Pattern.compile("class=\"mark\" x=\"(\\d+)\"[^>]*>(\\d+)<").matcher(page);
        while (mark.find()) {
            drawn.put(mark.group(2), Long.parseLong(mark.group(1)));
        }
        assertEquals(printed, drawn, scheme.id() + " " + flip);
    }

    @Test
    void theGuideIsFoundByItsPestsAndTheOfficeIsReached() {
        String page = SampleCounter.page(FoldSchemes.find("roll-3").orElse(FoldSchemes.all().get(0)),
                FlipEdge.LONG, "en");
        assertTrue(page.contains("<b>For leek, onion:</b> leek moth, onion thrips."), page);
        assertTrue(page.contains("<b>555-0199</b> · Mondays"), page);
        assertTrue(page.contains("Ask for Ada Weir, bees."), page);
        assertTrue(page.contains("1 Weir, Weir End · weir@marrowvalley.example"), page);
        assertTrue(page.contains("Weir &lt;&amp; Sons&gt; Office") && !page.contains("<& Sons"), page);
        assertEquals(List.of("leeks.en.letter.pdf", "leeks.es.letter.pdf"),
                all("href=\"([^\"]+)\" hreflang=\"..\">Print", page));
        assertEquals(List.of("poster.pdf"),
                all("the wall, one side: <a href=\"([^\"]+)\" hreflang=\"en\">English", page));
        assertEquals(List.of("poster.pdf", "leeks.en.ics"), all("href=\"([^\"]+)\" hreflang=\"..\">English", page));
        assertFalse(page.contains("Large print"), page);
        assertFalse(page.contains("leeks.es.ics"), page);
        assertFalse(SampleCounter.page(FoldSchemes.all().get(0), FlipEdge.LONG, "es").contains("Print"));
    }

    /** A style sheet in a page is read as it stands: markup's quotes would become letters in it. */
    @Test
    void theStyleSheetComesThroughWhole() {
        String page = SampleCounter.page(FoldSchemes.all().get(0), FlipEdge.SHORT, "en");
        String style = page.substring(page.indexOf("<style>"), page.indexOf("</style>"));
        assertFalse(style.contains("&"), style);
    }

    @Test
    void aLineOfTypeBecomesAStrokeOfItsLength() {
        Mark.Ink ink = new Mark.Ink("#7a2a1a");
        SetPanel panel = new SetPanel(3, List.of(
                new Mark.Words(30, 103, Face.REGULAR, 10, Mark.Ink.BLACK, "twelve words ", Optional.empty()),
                new Mark.Words(95, 103, Face.BOLD, 10, Mark.Ink.BLACK, "more", Optional.empty()),
                new Mark.Words(30, 49, Face.BOLD, 20, ink, "Title", Optional.empty()),
                new Mark.Words(30, 200, Face.BOLD, 10, Mark.Ink.WHITE, "on black", Optional.empty()),
                new Mark.Box(60, 180, 90, 30, Optional.of(Mark.Ink.BLACK), Optional.empty(), 0)));
        Miniature.Panel drawn = Miniature.of(List.of(panel), ink.rgb(), SampleCounter.HALF_AN_EM).panels().get(3);
        // from 30 to 95 + 4 letters of 5 points, at half the height of a capital of 6 above the base line
        assertEquals("M10 33h28", drawn.lines());
        assertEquals("M10 14h17", drawn.titles());
        assertEquals("M20 60h30v10h-30z", drawn.black());
        assertEquals("", drawn.inked());
    }
}
