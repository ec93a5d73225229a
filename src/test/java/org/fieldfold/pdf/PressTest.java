package org.fieldfold.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.Samples;
import org.fieldfold.typeset.SetGuide;
import org.fieldfold.typeset.SetPanel;
import org.fieldfold.typeset.Setter;
import org.fieldfold.typeset.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PressTest {
    private static final Imposition LETTER = SampleGuide.imposition("letter", Paper.LETTER, FlipEdge.SHORT);

    /** PDF/UA-1 and PDF/A-2a, judged by veraPDF; reading order, links, figures and boxes by our own judge. */
    @ParameterizedTest
    @CsvSource({"letter, LETTER, SHORT", "accordion-4, A4, LONG", "booklet-8, LETTER, SHORT", "map, A3, LONG",
            "gate, LEGAL, SHORT"})
    void keepsBothStandardsAndTheReadingOrder(String scheme, Paper paper, FlipEdge flip) throws IOException {
        Imposition imposition = SampleGuide.imposition(scheme, paper, flip);
        byte[] pdf = SampleGuide.print(SampleGuide.job(imposition));
        assertEquals(List.of(), Conformance.failures(pdf));
        assertEquals(List.of(), PdfJudge.judge(pdf, imposition).faults());
    }

    @Test
    void textIsReadPanelAfterPanelAcrossBothSides() throws IOException {
        String text = PdfJudge.judge(SampleGuide.print(SampleGuide.job(LETTER)), LETTER).text();
        int from = -1;
        for (int panel = 1; panel <= 6; panel++) {
            int at = text.indexOf("Heading of panel " + panel);
            assertTrue(at > from, "panel " + panel);
            from = at;
        }
        assertTrue(text.contains("Look for Leptinotarsa decemlineata on 50 stems (≥ 20 °C) \\ ¼ mile."),
                text);
        assertTrue(text.contains("Read 1: begun on one panel, it ends on the next panel."), text);
    }

    /** The header that stands again on the next panel is an artifact: one table, no ragged rows. */
    @Test
    void aTableThatRunsOnIsOneTable() throws IOException {
        Press press = SampleGuide.press();
        SetGuide set = new Setter(press.metrics(), press.shapes()).set(Samples.longTable(), LETTER.slots());
        PrintJob job = SampleGuide.job(LETTER, set, Optional.empty());
        press.freeze(job.characters());
        byte[] pdf = press.print(job);
        assertEquals(List.of(), Conformance.failures(pdf));
        assertEquals(List.of(), PdfJudge.judge(pdf, LETTER).faults());
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(List.of(), SheetJudge.faults(document, LETTER));
            List<FileTree.Element> tables = FileTree.of(document).all()
                    .filter(element -> element.role().equals("Table")).toList();
            assertEquals(1, tables.size());
            assertTrue(tables.get(0).contents().mapToInt(FileTree.Content::page).distinct().count() == 2,
                    "on both sides of the sheet");
        }
    }

    /** The judge itself: it must see what it is there to see. */
    @Test
    void theJudgeSeesPanelsReadInTheWrongOrder() throws IOException {
        Tag document = Tag.document();
        List<SetPanel> panels = new ArrayList<>();
        for (int reading = 6; reading >= 1; reading--) {
            Tag tag = document.add(Tag.Role.PARAGRAPH);
            panels.add(new SetPanel(reading, List.of(new Mark.Words(30, 60, Face.REGULAR, 8, Mark.Ink.BLACK,
                    "panel " + reading, Optional.of(tag)))));
        }
        SetGuide guide = new SetGuide(panels, document, 8, List.of(), List.of());
        byte[] pdf = SampleGuide.print(SampleGuide.job(LETTER, guide, Optional.empty()));
        assertEquals(List.of(), Conformance.failures(pdf), "veraPDF does not see it");
        assertEquals("panel 5 is read after panel 6: panel 5", PdfJudge.judge(pdf, LETTER).faults().get(0));
    }

    @Test
    void theJudgeSeesTextOutsideTheLiveArea() throws IOException {
        byte[] pdf = SampleGuide.print(SampleGuide.job(LETTER, SampleGuide.line(LETTER, "x", 2, 60),
                Optional.empty()));
        assertTrue(PdfJudge.judge(pdf, LETTER).faults().get(0).contains("outside the live areas"));
    }

    @Test
    void veraSeesAFigureWithoutAlternative() {
        Tag document = Tag.document();
        Tag figure = document.addFigure("");
        SetGuide guide = new SetGuide(List.of(new SetPanel(1, List.of(new Mark.Drawing("beetle", 30, 60, 30,
                40, figure)))), document, 8, List.of(), List.of());
        assertFalse(Conformance.failures(SampleGuide.print(SampleGuide.job(LETTER, guide, Optional.empty())))
                .isEmpty());
    }

    @Test
    void sameJobSameBytesWhereverAndHoweverOften() {
        PrintJob job = SampleGuide.job(LETTER, SampleGuide.set(LETTER), Optional.of("PROOF"));
        byte[] expected = SampleGuide.print(job);
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Apia"));
            assertArrayEquals(expected, SampleGuide.print(job));
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertArrayEquals(expected, SampleGuide.print(job));
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void sheetsPrintedAtTheSameTimeAreTheSame() {
        PrintJob job = SampleGuide.job(LETTER);
        Press press = SampleGuide.press();
        press.freeze(job.characters());
        byte[] expected = press.print(job);
        List<byte[]> printed = IntStream.range(0, 40).parallel().mapToObj(i -> press.print(job)).toList();
        printed.forEach(pdf -> assertArrayEquals(expected, pdf));
    }

    @Test
    void refusesACharacterWithoutAGlyph() {
        SetGuide guide = SampleGuide.line(LETTER, "two ↔ ways", 30, 60);
        PrintJob job = SampleGuide.job(LETTER, guide, Optional.empty());
        assertFalse(SampleGuide.press().metrics().has(Face.REGULAR, '↔'));
        String message = assertThrows(IllegalArgumentException.class,
                () -> SampleGuide.print(job)).getMessage();
        assertEquals("no glyph for U+2194 '↔' in the REGULAR face, in \"two ↔ ways\"; it must be in the"
                + " type and"
                + " among the characters that the press was frozen for", message);
    }

    @Test
    void refusesToPrintBeforeTheTypeIsFrozenAndUnknownFiguresAndTags() {
        PrintJob job = SampleGuide.job(LETTER);
        assertThrows(IllegalStateException.class, () -> SampleGuide.press().print(job));
        Press bare = Press.of(Map.of());
        bare.freeze(job.characters());
        assertTrue(assertThrows(IllegalArgumentException.class, () -> bare.print(job)).getMessage()
                .contains("'beetle'"));
        SetGuide stray = new SetGuide(job.guide().panels(), Tag.document(), 8, List.of(), List.of());
        assertThrows(IllegalArgumentException.class,
                () -> SampleGuide.print(SampleGuide.job(LETTER, stray, Optional.empty())));
    }

    @ParameterizedTest
    @CsvSource({"letter, SHORT, DuplexFlipShortEdge", "letter, LONG, DuplexFlipLongEdge",
            "booklet-8, SHORT, Simplex"})
    void tellsPrintersNotToShrinkAndHowToTurn(String scheme, FlipEdge flip,
    String duplex) throws IOException {
        byte[] pdf = SampleGuide.print(SampleGuide.job(SampleGuide.imposition(scheme, Paper.A4, flip)));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDViewerPreferences preferences = document.getDocumentCatalog().getViewerPreferences();
            assertEquals("None", preferences.getPrintScaling());
            assertEquals(duplex, preferences.getDuplex());
            assertTrue(preferences.displayDocTitle());
            assertTrue(preferences.getCOSObject().getBoolean("PickTrayByPDFSize", false));
            assertEquals(1.7f, document.getVersion());
        }
    }

    @Test
    void theOutlineLeadsToThePanels() throws IOException {
        try (PDDocument document = Loader.loadPDF(SampleGuide.print(SampleGuide.job(LETTER)))) {
            List<String> titles = new ArrayList<>();
            document.getDocumentCatalog().getDocumentOutline().children().forEach(item -> titles.add(item
                    .getTitle()));
            assertEquals(IntStream.rangeClosed(1, 6).mapToObj(i -> "Panel " + i + " é").toList(), titles);
            int third = document.getPages().indexOf(document.getDocumentCatalog().getDocumentOutline()
                    .getFirstChild().getNextSibling().getNextSibling().findDestinationPage(document));
            assertEquals(LETTER.slot(3).side().ordinal(), third);
        }
    }
}
