package org.fieldfold.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fieldfold.fold.FlatScheme;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Gathering;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.SetGuide;
import org.fieldfold.typeset.SetPanel;
import org.fieldfold.typeset.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Several sheets in one file: their order, their order of reading, and the judge that sees both. */
class GatheredSheetsTest {
    /** Each panel says its number; {@code order} is the order of the tags. */
    private static SetGuide guide(List<Integer> order) {
        Tag document = Tag.document();
        List<SetPanel> panels = new ArrayList<>();
        for (int reading : order) {
            Tag tag = document.add(Tag.Role.PARAGRAPH);
            panels.add(new SetPanel(reading, List.of(new Mark.Words(90, 90, Face.REGULAR, 14, Mark.Ink.BLACK,
                    "panel " + reading + " ", Optional.of(tag)))));
        }
        return new SetGuide(panels, document, 14, List.of(), List.of());
    }

    private static byte[] print(SetGuide guide, Gathering sheets, PrintJob.Surround around) {
        return SampleGuide.print(new PrintJob("Pages", "", "en", 2027, "Demonstration Extension",
                LocalDate.of(2027, 1, 15), guide, sheets, around, SheetWords.in("en"), Optional.empty()));
    }

    @ParameterizedTest
    @CsvSource({"LONG, PAGES", "SHORT, PAGES", "LONG, FOLDS", "SHORT, FOLDS"})
    void pagesOfThreeSheetsFollowAsTheyAreRead(FlipEdge flip, PrintJob.Surround around) throws IOException {
        Imposition sheet = FlatScheme.PAGE.on(Paper.LETTER, flip);
        Gathering three = new Gathering(sheet, 3);
        byte[] pdf = print(guide(List.of(1, 2, 3, 4, 5, 6)), three, around);
        assertEquals(List.of(), Conformance.failures(pdf));
        PdfJudge.Verdict verdict = PdfJudge.judge(pdf, three);
        assertEquals(List.of(), verdict.faults());
        assertEquals("panel 1 panel 2 panel 3 panel 4 panel 5 panel 6 ", verdict.text());
        List<PrintedType.Letter> letters = PrintedType.of(pdf);
        for (int page = 1; page <= 6; page++) {
            int here = page;
            PrintedType.Letter number = letters.stream().filter(letter -> letter.page() == here
                    && letter.text().equals(Integer.toString(here)) && letter.size() == 14)
                    // what surrounds the panels is painted before them, and has figures of its own
                    .reduce((earlier, later) -> later).orElseThrow();
            // backs of upright pages stand on their heads for a printer that turns on the short edge
            boolean turned = flip == FlipEdge.SHORT && page % 2 == 0;
            assertEquals(turned, number.y() < sheet.sheetHeight() / 2);
        }
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(flip == FlipEdge.LONG ? "DuplexFlipLongEdge" : "DuplexFlipShortEdge",
                    document.getDocumentCatalog().getViewerPreferences().getDuplex());
        }
    }

    @Test
    void twoFoldedSheetsAreReadOneAfterTheOther() throws IOException {
        Gathering two = new Gathering(SampleGuide.imposition("half", Paper.LETTER, FlipEdge.SHORT), 2);
        byte[] pdf = print(guide(List.of(1, 2, 3, 4, 5, 6, 7, 8)), two, PrintJob.Surround.FOLDS);
        assertEquals(List.of(), Conformance.failures(pdf));
        assertEquals(List.of(), PdfJudge.judge(pdf, two).faults());
    }

    /** The judge itself: it must see a sheet that is read too early. */
    @Test
    void theJudgeSeesSheetsInTheWrongOrder() throws IOException {
        Gathering three = new Gathering(FlatScheme.PAGE.on(Paper.LETTER, FlipEdge.LONG), 3);
        List<String> faults = PdfJudge.judge(print(guide(List.of(1, 2, 5, 6, 3, 4)), three,
                PrintJob.Surround.PAGES), three).faults();
        assertTrue(faults.get(0).startsWith("panel 3 is read after panel 6"), faults.toString());
    }
}
