package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.fold.Side;
import org.fieldfold.manuscript.LargePrint;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.pdf.Conformance;
import org.fieldfold.pdf.PdfJudge;
import org.fieldfold.pdf.Press;
import org.fieldfold.pdf.PrintedType;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.PrintMeFirst;
import org.fieldfold.typeset.SetPanel;
import org.fieldfold.typeset.Tag;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The other forms of every guide that ships: in large type, and as a poster. */
class FormsTest {
    private static ContentBase base;
    private static Press press;
    private static List<Form> forms;
    private static final Map<String, byte[]> PRINTED = new HashMap<>();

    @BeforeAll
    static void print() throws IOException {
        base = BaseLoader.load(Path.of("content")).base().orElseThrow();
        Map<String, byte[]> figures = new HashMap<>(PrintMeFirst.figures());
        base.figures().values().forEach(figure ->
                figures.put(figure.value().id(), figure.value().bytes()));
        press = Press.of(figures);
        forms = new ArrayList<>(new AllForms(base, press, false).all());
        forms.addAll(spanish());
        Set<Integer> characters = new TreeSet<>();
        forms.forEach(form -> characters.addAll(form.job().characters()));
        press.freeze(characters);
        forms.forEach(form -> PRINTED.put(form.path(), press.print(form.job())));
    }

    /** The longer words, also while the edition does not speak them. */
    private static List<Form> spanish() {
        return base.edition().value().languages().contains("es") ? List.of()
                : new AllForms(base, press, true).first("es");
    }

    private static List<Form> named(String form) {
        List<Form> found = forms.stream().filter(one -> one.path().endsWith("." + form + ".pdf"))
                .toList();
        assertTrue(found.size() >= 20, form + ": " + found.size());
        return found;
    }

    private static byte[] pdf(Form form) {
        return PRINTED.get(form.path());
    }

    @Test
    void everyGuideHasItsFormsOnBothPapersAndEverythingFits() {
        for (String guide : base.guides().keySet()) {
            for (String paper : List.of("letter", "a4")) {
                for (String form : List.of("large-print", "poster")) {
                    String path = "foldouts/" + guide + ".en." + paper + "." + form + ".pdf";
                    assertTrue(PRINTED.containsKey(path), path);
                }
            }
        }
        List<Finding> findings = forms.stream().flatMap(form -> form.findings().stream()).toList();
        assertEquals(List.of(), findings);
    }

    /** ISO 14289-1 and ISO 19005-2, level A, by veraPDF; order, boxes and live areas by our own judge. */
    @Test
    void everyFormKeepsTheStandardsAndTheReadingOrder() throws IOException {
        for (Form form : forms) {
            assertEquals(List.of(), PdfJudge.judge(pdf(form), form.job().sheets()).faults(), form.path());
            // BuildTest asks it of every file
            if (form.path().contains("potato") || form.path().contains("home-garden")) {
                assertEquals(List.of(), Conformance.failures(pdf(form)), form.path());
            }
        }
    }

    /** Every letter on the paper, also those of page numbers and beside the bar of 100 mm. */
    @Test
    void nothingInLargePrintIsBelow14Points() throws IOException {
        for (Form form : named("large-print")) {
            List<PrintedType.Letter> letters = PrintedType.of(pdf(form));
            assertTrue(letters.size() > 2000, form.path());
            letters.forEach(letter -> assertTrue(letter.size() >= LargePrint.SMALLEST - 1e-3,
                    form.path() + ": " + letter));
        }
    }

    /** Lines of one text, as set: 120 % at least from baseline to baseline. */
    @Test
    void largePrintIsWellLeaded() {
        int measured = 0;
        for (Form form : named("large-print")) {
            for (SetPanel panel : form.job().guide().panels()) {
                Map<Tag, Mark.Words> above = new IdentityHashMap<>();
                for (Mark mark : panel.marks()) {
                    if (mark instanceof Mark.Words words && words.tag().isPresent()) {
                        Mark.Words before = above.put(words.tag().get(), words);
                        double step = before == null ? 0 : words.baseline() - before.baseline();
                        if (step > 0.01 && before.size() == words.size()) {
                            measured++;
                            assertTrue(step >= 1.2 * words.size() - 1e-6, form.path() + ": " + words);
                        }
                    }
                }
            }
        }
        assertTrue(measured > 500, "lines measured: " + measured);
    }

    @Test
    void theSheetsOfLargePrintFollowInTheFile() throws IOException {
        for (Form form : named("large-print")) {
            int pages = form.job().sheets().slots().size();
            assertEquals(2 * form.job().sheets().sheets(), pages);
            List<PrintedType.Letter> letters = PrintedType.of(pdf(form));
            for (int page = 1; page <= pages; page++) {
                int here = page;
                String text = letters.stream().filter(letter -> letter.page() == here)
                        .map(PrintedType.Letter::text).collect(Collectors.joining());
                assertTrue(text.contains(Phrases.in(form.manuscript().language()).say("folio", page, pages)),
                        form.path() + ": " + text);
            }
            try (PDDocument document = Loader.loadPDF(pdf(form))) {
                assertEquals(pages, document.getNumberOfPages());
                assertEquals("DuplexFlipLongEdge", document.getDocumentCatalog().getViewerPreferences()
                        .getDuplex());
            }
        }
    }

    /** A pest may be taken along alone: it begins on a front, and no other begins before the next front. */
    @Test
    void eachPestInLargePrintHasSheetsOfItsOwn() {
        for (Form form : named("large-print")) {
            List<String> sections = form.job().guide().fit().stream().map(panel -> panel.section()).toList();
            int before = 2;
            for (String pest : base.guides().get(form.manuscript().id()).value().entries()) {
                int front = sections.indexOf(pest) + 1;
                int doing = sections.lastIndexOf(pest + "-2") + 1;
                assertEquals(1, front % 2, form.path() + ": " + pest + " on page " + front);
                assertTrue(front > before && doing > front && doing <= front + 3, form.path() + ": " + pest
                        + " on pages " + front + " and " + doing);
                before = doing;
            }
            assertEquals("contact-2", sections.get(sections.size() - 1));
        }
    }

    @Test
    void aPosterIsOnePageWithoutAnyInsecticide() throws IOException {
        for (Form form : named("poster")) {
            String text = PdfJudge.judge(pdf(form), form.job().sheets()).text().toLowerCase(Locale.ROOT);
            try (PDDocument document = Loader.loadPDF(pdf(form))) {
                assertEquals(1, document.getNumberOfPages(), form.path());
            }
            if (!form.manuscript().language().equals("en")) {
                continue;
            }
            base.materials().values().forEach(material ->
                    assertTrue(!text.contains(material.value().name().toLowerCase(Locale.ROOT)),
                            form.path() + " names " + material.value().name()));
            for (String needed : List.of("call 555-0100", "2027", "holds until january 31, 2028",
                    "demonstration, not advice", "the label is the law")) {
                assertTrue(text.contains(needed), form.path() + ": " + needed + " in " + text);
            }
            for (String pest : base.guides().get(form.manuscript().id()).value().entries()) {
                assertTrue(text.contains(base.pests().get(pest).value().names().common()
                        .toLowerCase(Locale.ROOT)), form.path() + ": " + pest);
            }
        }
    }

    /** Too many cards for a wall: the poster is left out, and said to be; large print takes more sheets. */
    @Test
    void aPosterThatIsTooFullIsNotPrinted(@TempDir Path folder) throws IOException {
        Path guide = FolderCopy.of(Path.of("content"), folder).resolve("guides/brassicas.yaml");
        Files.writeString(guide, Files.readString(guide).replace("entries: [",
                "entries: [swede-midge, cabbage-aphid, onion-thrips, "));
        ContentBase full = BaseLoader.load(folder).base().orElseThrow();
        List<Form> found = new Forms(full, press, false).of(full.guides().get("brassicas"),
                Phrases.in("en"), "letter");
        assertEquals(List.of("foldouts/brassicas.en.letter.large-print.pdf"),
                found.stream().map(Form::path).toList());
        assertTrue(found.get(0).job().sheets().sheets() >= 10, found.get(0).paper());
        List<Finding> findings = found.get(0).findings();
        assertEquals(1, findings.size(), findings.toString());
        assertEquals(Severity.WARNING, findings.get(0).severity());
        assertTrue(findings.get(0).message().contains("Cabbage family"), findings.get(0).message());
    }

    /** Body type of 12.5 point: capitals of 2.9 mm, read from 58 cm (common practice, no source). */
    @Test
    void aPosterIsReadFromAnArmsLength() {
        for (Form form : named("poster")) {
            assertTrue(form.job().guide().typeSize() >= 12.5, form.path() + " " + form.job().guide()
                    .typeSize());
            double largest = form.job().guide().panels().get(0).marks().stream()
                    .filter(Mark.Words.class::isInstance).map(Mark.Words.class::cast)
                    .filter(words -> words.ink().equals(Mark.Ink.WHITE) && words.text().matches("[0-9]+ ?"))
                    .mapToDouble(Mark.Words::size).max().orElse(0);
            assertTrue(largest >= 36, form.path() + ": numbers of " + largest);
        }
    }

    @Test
    void everyPaperAndEveryOfficeHasASheetToPrintFirst() throws IOException {
        List<String> expected = new ArrayList<>();
        for (String paper : List.of("letter", "a4")) {
            expected.add("foldouts/print-me-first.en." + paper);
        }
        base.offices().values().forEach(office -> expected.add("offices/" + office.value().id()
                + "/print-me-first." + office.value().paper()));
        for (String path : expected) {
            for (String flip : List.of("", ".long-edge")) {
                byte[] pdf = PRINTED.get(path + flip + ".pdf");
                assertTrue(pdf != null, path);
                try (PDDocument document = Loader.loadPDF(pdf)) {
                    assertEquals(2, document.getNumberOfPages());
                    assertEquals(flip.isEmpty() ? "DuplexFlipShortEdge" : "DuplexFlipLongEdge",
                            document.getDocumentCatalog().getViewerPreferences().getDuplex());
                }
            }
        }
        assertEquals(List.of(), Conformance.failures(PRINTED.get("foldouts/print-me-first.en.letter.pdf")));
        assertEquals(List.of(), Conformance.failures(
                PRINTED.get("offices/saltmere/print-me-first.a4.long-edge.pdf")));
    }

    /** Where a place of a panel lies on the front of its sheet, seen through the paper from the front. */
    private static double[] through(Imposition sheet, PanelSlot slot, double x, double y) {
        boolean turned = slot.rotation() == 180;
        double[] page = {turned ? sheet.sheetWidth() - x : x, turned ? sheet.sheetHeight() - y : y};
        if (slot.side() == Side.FRONT) {
            return page;
        }
        // lying pages: about the short edge like a leaf, about the long edge head over heels
        return sheet.flip() == FlipEdge.SHORT ? new double[] {sheet.sheetWidth() - page[0], page[1]}
                : new double[] {page[0], sheet.sheetHeight() - page[1]};
    }

    /** Rings and cross, both arrows: in the same place of the paper, whichever edge it is turned on. */
    @Test
    void whatBelongsTogetherLiesOnEachOtherOnASheetThatIsRight() {
        int seen = 0;
        for (Form form : forms) {
            if (!form.path().contains("print-me-first")) {
                continue;
            }
            Imposition sheet = form.job().imposition();
            List<SetPanel> panels = form.job().guide().panels();
            List<Mark.Box> rings = panels.get(0).marks().stream().filter(Mark.Box.class::isInstance)
                    .map(Mark.Box.class::cast).filter(box -> box.outline().isPresent()).toList();
            assertEquals(6, rings.size());
            List<double[]> centres = new ArrayList<>();
            for (int i = 0; i < rings.size(); i++) {
                Mark.Box ring = rings.get(i);
                centres.add(through(sheet, sheet.slot(1), ring.x() + ring.width() / 2,
                        ring.y() + ring.height() / 2));
                // the middle of the line is 1 mm further out each time
                assertEquals((i + 1) * 72 / 25.4, ring.width() / 2, 1e-6);
            }
            List<Mark.Stroke> cross = panels.get(1).marks().stream().filter(Mark.Stroke.class::isInstance)
                    .map(Mark.Stroke.class::cast).filter(stroke -> stroke.width() == 0.7).toList();
            assertEquals(2, cross.size());
            cross.forEach(arm -> centres.add(through(sheet, sheet.slot(2), (arm.x1() + arm.x2()) / 2,
                    (arm.y1() + arm.y2()) / 2)));
            centres.forEach(centre -> assertArrayEquals(centres.get(0), centre, 1e-6, form.path()));
            List<double[]> points = new ArrayList<>();
            for (SetPanel panel : panels) {
                Mark.Shape arrow = panel.marks().stream().filter(Mark.Shape.class::isInstance)
                        .map(Mark.Shape.class::cast).findFirst().orElseThrow();
                points.add(through(sheet, sheet.slot(panel.reading()), arrow.points().get(0),
                        arrow.points().get(1)));
            }
            assertArrayEquals(points.get(0), points.get(1), 1e-6, form.path());
            seen++;
        }
        assertEquals(18, seen);
    }

    @Test
    void theBarsToMeasureAre100MillimetresLong() {
        for (Form form : forms) {
            if (form.path().contains("print-me-first")) {
                List<Double> bars = form.job().guide().panels().get(0).marks().stream()
                        .filter(Mark.Stroke.class::isInstance).map(Mark.Stroke.class::cast)
                        .filter(stroke -> stroke.width() == 1.1).map(stroke -> Math.hypot(
                                stroke.x2() - stroke.x1(), stroke.y2() - stroke.y1())).toList();
                assertEquals(2, bars.size());
                bars.forEach(bar -> assertEquals(100 * 72 / 25.4, bar, 1e-9));
            }
        }
    }

    /** In both languages: no words on other words, on a drawing or on an arrow. */
    @Test
    void nothingLiesOnWords() {
        for (Form form : forms) {
            for (SetPanel panel : form.job().guide().panels()) {
                List<Rectangle2D> words = new ArrayList<>();
                List<Rectangle2D> pictures = new ArrayList<>();
                for (Mark mark : panel.marks()) {
                    if (mark instanceof Mark.Words one && !one.text().isBlank()) {
                        // from the feet of small letters to their heads
                        words.add(new Rectangle2D.Double(one.x(), one.baseline() - 0.5 * one.size(),
                                press.metrics().width(one.face(), one.text().strip()) * one.size() / 1000
                                - 0.5, 0.5 * one.size()));
                    } else if (mark instanceof Mark.Drawing one) {
                        pictures.add(new Rectangle2D.Double(one.x(), one.y(), one.width(), one.height()));
                    } else if (mark instanceof Mark.SquareCode one) {
                        pictures.add(new Rectangle2D.Double(one.x(), one.y(), one.size(), one.size()));
                    }
                }
                for (int i = 0; i < words.size(); i++) {
                    for (int j = i + 1; j < words.size(); j++) {
                        assertTrue(!words.get(i).intersects(words.get(j)), form.path() + " page "
                                + panel.reading() + ": " + words.get(i) + " " + words.get(j));
                    }
                    for (Rectangle2D picture : pictures) {
                        assertTrue(!words.get(i).intersects(picture), form.path() + " page "
                                + panel.reading() + ": " + words.get(i) + " on " + picture);
                    }
                }
            }
        }
    }

    @Test
    void theFitReportSaysHowManySheetsWereChosen() {
        Form potato = named("large-print").stream()
                .filter(form -> form.path().contains("potato.en.letter")).findFirst().orElseThrow();
        List<FitRow> fit = potato.fit(new FitRows(base));
        assertEquals("letter, large print, 5 sheets", fit.get(0).paper());
        assertEquals(10, fit.size());
        assertTrue(fit.stream().allMatch(row -> row.brief() == 0), "nothing is shortened");
    }

    @Test
    void theSameContentGivesTheSameBytes() {
        List<Form> again = new ArrayList<>(new AllForms(base, press, false).all());
        again.addAll(spanish());
        assertEquals(forms.stream().map(Form::path).toList(),
                again.stream().map(Form::path).toList());
        again.forEach(form -> assertArrayEquals(pdf(form), press.print(form.job()), form.path()));
    }

    @Test
    void qpdfFindsEveryFormSound(@TempDir Path folder) throws Exception {
        Outside.need("qpdf");
        for (Form form : forms) {
            Path file = folder.resolve(Path.of(form.path()).getFileName());
            Files.write(file, pdf(form));
            Outside.Said said = Outside.run("qpdf", "--check", file.toString());
            assertEquals(0, said.status(), said.text());
        }
    }
}
