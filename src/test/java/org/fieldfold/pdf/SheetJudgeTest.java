package org.fieldfold.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.SetGuide;
import org.fieldfold.typeset.SetPanel;
import org.fieldfold.typeset.Tag;
import org.junit.jupiter.api.Test;

/** The judge sees what it is there to see: each sheet here has one fault that was put there. */
class SheetJudgeTest {
    private static final Imposition LETTER = SampleGuide.imposition("letter", Paper.LETTER, FlipEdge.SHORT);

    private static List<String> faults(PrintJob job, Imposition judged, Consumer<PDDocument> damage)
            throws IOException {
        try (PDDocument document = Loader.loadPDF(SampleGuide.print(job))) {
            damage.accept(document);
            return SheetJudge.faults(document, judged);
        }
    }

    private static void assertFault(String words, List<String> faults) {
        assertTrue(faults.stream().anyMatch(fault -> fault.contains(words)), () -> faults.toString());
    }

    private static FileTree.Element first(PDDocument document, String role) {
        try {
            return FileTree.of(document).all().filter(element -> element.role().equals(role)).findFirst()
                    .orElseThrow();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void aSoundSheetHasNoFault() throws IOException {
        assertEquals(List.of(), faults(SampleGuide.job(LETTER), LETTER, sound -> { }));
    }

    @Test
    void aSheetForAnotherFold() throws IOException {
        Imposition other = SampleGuide.imposition("accordion-3", Paper.LETTER, FlipEdge.SHORT);
        assertFault("is read after panel", faults(SampleGuide.job(LETTER), other, sound -> { }));
    }

    @Test
    void aBackThatStandsOnItsHead() throws IOException {
        Imposition other = SampleGuide.imposition("letter", Paper.LETTER, FlipEdge.LONG);
        assertFault("turned by 0", faults(SampleGuide.job(LETTER), other, sound -> { }));
    }

    @Test
    void wordsOverWordsAndWordsOnAFold() throws IOException {
        Tag document = Tag.document();
        List<Mark> marks = new ArrayList<>();
        for (double x : new double[] {30, 33}) {
            marks.add(new Mark.Words(x, 60, Face.REGULAR, 8, Mark.Ink.BLACK, "count",
                    Optional.of(document.add(Tag.Role.PARAGRAPH))));
        }
        marks.add(new Mark.Words(4, 90, Face.REGULAR, 8, Mark.Ink.BLACK, "fold",
                Optional.of(document.addSection("one").add(Tag.Role.PARAGRAPH))));
        SetGuide guide = new SetGuide(List.of(new SetPanel(1, marks)), document, 8, List.of(), List.of());
        List<String> faults = faults(SampleGuide.job(LETTER, guide, Optional.empty()), LETTER, sound -> { });
        assertFault(" over Thing", faults);
        assertFault("too near a fold", faults);
        assertFault("the last panel that is read is 1", faults);
    }

    @Test
    void aBoxThatIsElsewhere() throws IOException {
        assertFault("outside its box", faults(SampleGuide.job(LETTER), LETTER, document -> {
            COSArray box = ((COSDictionary) first(document, "Figure").entry().getDictionaryObject(COSName.A))
                    .getCOSArray(COSName.BBOX);
            box.set(1, new COSFloat(box.toFloatArray()[1] + 3));
        }));
    }

    @Test
    void aListThatSaysItIsNumberedAndABookmarkWithAnotherName() throws IOException {
        List<String> faults = faults(SampleGuide.job(LETTER), LETTER, document -> {
            ((COSDictionary) first(document, "L").entry().getDictionaryObject(COSName.A))
                    .setName(COSName.getPDFName("ListNumbering"), "Decimal");
            document.getDocumentCatalog().getDocumentOutline().getFirstChild().setTitle("Another");
        });
        assertFault("says that it is numbered 'Decimal'", faults);
        assertFault("bookmarks [Another", faults);
    }
}
