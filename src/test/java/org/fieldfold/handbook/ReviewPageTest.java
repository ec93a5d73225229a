package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.fieldfold.edition.Rereadings;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class ReviewPageTest {
    private static final Placed<PestEntry> LEEK_MOTH = Shipped.BASE.pests().get("leek-moth");
    private static final Placed<PestEntry> ONION_THRIPS = Shipped.BASE.pests().get("onion-thrips");

    private static byte[] page(boolean proof) {
        return ReviewPage.write(Shipped.BASE, Rereadings.of(Shipped.BASE, Optional.empty()), List.of(
                Finding.info(ONION_THRIPS.at("names"), "rule-c", "third", ""),
                Finding.error(LEEK_MOTH.at("thresholds"), "rule-b", "second", "mend it so"),
                Finding.warning(LEEK_MOTH.at("names"), "rule-a", "first", "")), List.of(
                new FitRow("onion-family", "letter", 4, "leek-moth", 0.8, 8.25, 10,
                        List.of(new FitRow.Form("damage/0", true)), Optional.empty()),
                new FitRow("onion-family", "letter", 5, "onion-thrips", 1.04, 8.25, 10, List.of(),
                        Optional.of(new FitRow.Over("onion-thrips", "monitoring",
                                ONION_THRIPS.at("monitoring"), 3)))), proof);
    }

    @Test
    void groupsFindingsByFileInTheOrderOfTheirPlaces() {
        Document page = Html.parse(new HandbookFile("review/index.html", page(false)));
        assertEquals(List.of("content/pests/leek-moth.yaml", "content/pests/onion-thrips.yaml"),
                Html.classed(page, "file").stream().map(Element::getTextContent).toList());
        List<Element> findings = Html.all(Html.classed(page, "findings").get(0), "li");
        assertEquals(List.of("warning", "error"),
                findings.stream().map(one -> one.getAttribute("class")).toList());
        assertTrue(findings.get(1).getTextContent().contains("second rule-bmend it so"),
                findings.get(1).getTextContent());
    }

    @Test
    void notesStandBehindAllThatIsToBeMended() {
        Document page = Html.parse(new HandbookFile("review/index.html", page(false)));
        List<String> parts = Html.classed(page, "part").stream().map(part -> part.getAttribute("id")).toList();
        assertEquals(List.of("findings", "fit", "due", "notes"), parts);
        Element notes = Html.classed(page, "part").get(3);
        assertTrue(notes.getTextContent().contains("third rule-c"), notes.getTextContent());
        assertEquals(1, Html.all(notes, "li").size());
    }

    /** A foldout is a line; the panels one by one are folded away, on paper too. */
    @Test
    void aFoldoutIsALineAndItsPanelsAreFoldedAway() {
        Document page = Html.parse(new HandbookFile("review/index.html", page(false)));
        Element foldouts = Html.all(page, "table").get(1);
        assertTrue(foldouts.getTextContent().contains("onion-familyletter2onion-thrips, 104 %8.25 pt1"),
                foldouts.getTextContent());
        Element details = Html.all(page, "details").get(0);
        assertEquals(2, Html.all(Html.all(details, "tbody").get(0), "tr").size());
    }

    @Test
    void putsTheFullestPanelFirstAndSaysThatItIsTooFull() {
        Document page = Html.parse(new HandbookFile("review/index.html", page(false)));
        Element first = Html.classed(page, "over").get(0);
        assertTrue(first.getTextContent().contains("onion-thrips104 % – too much by 3 lines at monitoring"),
                first.getTextContent());
    }

    @Test
    void listsEveryEntryWithTheDayItWasReadOldestFirst() {
        Document page = Html.parse(new HandbookFile("review/index.html", page(false)));
        List<Element> tables = Html.all(page, "table");
        List<Element> rows = Html.all(Html.all(tables.get(tables.size() - 1), "tbody").get(0), "tr");
        assertEquals(Shipped.BASE.reviewed().size(), rows.size());
        List<String> days = rows.stream().map(row -> Html.all(row, "td").get(2).getTextContent()).toList();
        assertEquals(days.stream().sorted().toList(), days);
    }

    @Test
    void listsEveryFigureWithItsCreditLicenceAndRelease() {
        Document page = Html.parse(new HandbookFile("review/figures.html",
                FiguresPage.write(Shipped.BASE, false)));
        List<Element> rows = Html.all(Html.all(page, "tbody").get(0), "tr");
        assertEquals(Shipped.BASE.figures().size(), rows.size());
        assertEquals(List.of("Drawn for this demonstration", "CC0-1.0", "own work"),
                Html.all(rows.get(0), "td").stream().skip(2).map(Element::getTextContent).toList());
    }

    @Test
    void isTheSameTwiceAndMarksAProof() {
        assertArrayEquals(page(true), page(true));
        assertEquals(1, Html.classed(Html.parse(new HandbookFile("r", page(true))), "proof").size());
    }

    @Test
    void refusesAFitThatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> new FitRow("g", "a4", 0, "s", 1, 8, 10,
                List.of(), Optional.empty()));
        assertThrows(IllegalArgumentException.class, () -> new FitRow("g", "a4", 1, "s", Double.NaN, 8, 10,
                List.of(), Optional.empty()));
    }
}
