package org.fieldfold.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fieldfold.Outside;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;
import org.fieldfold.prose.Run;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.SetGuide;
import org.fieldfold.typeset.Setter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a reading voice needs besides the words: what abbreviations stand for (ISO 32000-1, 14.9.5), and the
 * language of names (14.9.2).
 */
class ReadAloudTest {
    private static final Map<String, String> EXPANSIONS = Map.of("PHI", "pre-harvest interval", "REI",
            "restricted-entry interval", "IPM", "integrated pest management");
    private static final Span HERE = Span.startOf(new SourceFile("content/sample.yaml", ""));

    @TempDir
    Path folder;

    @Test
    void abbreviationsOfTheGuidesAreExplainedWhereTheyAreFirstRead() throws IOException {
        for (DemoGuides.Printed guide : DemoGuides.all()) {
            try (PDDocument document = Loader.loadPDF(guide.pdf())) {
                FileTree.Element root = FileTree.of(document);
                String text = root.text();
                for (Map.Entry<String, String> one : EXPANSIONS.entrySet()) {
                    List<FileTree.Element> said = root.all()
                            .filter(element -> element.says("E").equals(one.getValue())).toList();
                    assertEquals(text.matches("(?s).*\\b" + one.getKey() + "\\b.*") ? 1 : 0, said.size(),
                            guide.id() + " " + one.getKey());
                }
            }
        }
    }

    @Test
    void namesOfTheGuidesAreLatin() throws IOException {
        for (DemoGuides.Printed guide : DemoGuides.all()) {
            TreeSet<String> expected = new TreeSet<>();
            guide.manuscript().sections().stream().flatMap(section -> section.blocks().stream())
                    .filter(Block.Title.class::isInstance).map(Block.Title.class::cast)
                    .flatMap(title -> title.beneath().stream())
                    .filter(run -> run.style() == Run.Style.NAME).forEach(run -> expected.add(run.text()));
            try (PDDocument document = Loader.loadPDF(guide.pdf())) {
                TreeSet<String> latin = FileTree.of(document).all()
                        .filter(element -> element.says("Lang").equals("la"))
                        .map(element -> element.text().replace('\u00a0', ' ').strip())
                        .collect(Collectors.toCollection(TreeSet::new));
                assertTrue(expected.size() >= 3 && latin.containsAll(expected), guide.id() + " " + latin);
                latin.forEach(name -> assertTrue(name.matches("[\\p{L}-]+( [\\p{L}.-]+)*"), name));
                assertEquals("en", document.getDocumentCatalog().getLanguage());
            }
        }
    }

    private static Section section(List<Block> blocks) {
        return new Section("one", Section.Kind.ENTRY, 1, "One", blocks, HERE);
    }

    private static Manuscript manuscript() {
        return new Manuscript("sample", "Sample", "en", 2027, "31 January 2028", Optional.empty(),
                List.of(Run.plain("The label is the law.")), "#000000", new Manuscript.TypeRange(8, 8),
                List.of(section(List.of(
                        new Block.Title(List.of(Run.plain("Friends: "), Run.name("Aphidius")), List.of(),
                                HERE),
                        new Block.Paragraph(List.of(Run.plain("PHILOSOPHY is no PHI; wait out the PHI.")),
                                List.of(), HERE),
                        new Block.Paragraph(List.of(Run.plain("In Spanish: "),
                                Run.plain("escarabajo de la papa").in("es"), Run.plain(".")), List.of(),
                                HERE),
                        new Block.Heading(2, List.of(Run.plain("Spare "), Run.name("Coleomegilla maculata"),
                                Run.plain(" and REI")), HERE),
                        new Block.Paragraph(List.of(Run.strong("REI"), Run.plain(" and PHI again.")),
                                List.of(), HERE)))));
    }

    private static SetGuide set(Press press, Imposition imposition) {
        return new Setter(press.metrics(), press.shapes()).set(manuscript(), imposition.slots());
    }

    @Test
    void eachAbbreviationIsExplainedOnceAlsoInAHeading() throws Exception {
        Imposition imposition = SampleGuide.imposition("half", Paper.LETTER, FlipEdge.SHORT);
        Press press = SampleGuide.press();
        PrintJob job = SampleGuide.job(imposition, set(press, imposition), Optional.empty());
        press.freeze(job.characters());
        byte[] pdf = press.print(job);
        assertEquals(List.of(), Conformance.failures(pdf));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            FileTree.Element root = FileTree.of(document);
            assertEquals(List.of("PHI = pre-harvest interval in P", "REI = restricted-entry interval in H2"),
                    root.all().flatMap(parent -> parent.elements().stream()
                            .filter(element -> !element.says("E").isEmpty()).map(element -> element.text()
                                    + " = " + element.says("E") + " in " + parent.role())).toList());
            assertTrue(root.text().contains("PHILOSOPHY is no PHI; wait out the PHI."), root.text());
            assertTrue(root.text().contains("REI and PHI again."), root.text());
            assertEquals(List.of("escarabajo de la papa"), root.all()
                    .filter(element -> element.says("Lang").equals("es"))
                    .map(FileTree.Element::text).toList());
        }
        Outside.need("pdfinfo");
        Path file = folder.resolve("sample.pdf");
        Files.write(file, pdf);
        Outside.Said said = Outside.run("pdfinfo", "-struct-text", file.toString());
        assertTrue(said.text().contains("\"PHI\""), said.text());
        assertTrue(new String(pdf, StandardCharsets.ISO_8859_1).contains("/E (pre-harvest interval)"));
    }

    /** In bold headings a scientific name is bold and italic, and Latin. */
    @Test
    void namesInHeadingsAreItalicInBoldAndLatin() {
        Imposition imposition = SampleGuide.imposition("half", Paper.LETTER, FlipEdge.SHORT);
        List<Mark.Words> words = set(SampleGuide.press(), imposition).panels().stream()
                .flatMap(panel -> panel.marks().stream()).filter(Mark.Words.class::isInstance)
                .map(Mark.Words.class::cast).filter(mark -> mark.tag().isPresent()).toList();
        for (String name : List.of("Aphidius", "Coleomegilla maculata")) {
            List<Mark.Words> found = words.stream()
                    .filter(mark -> mark.text().replace('\u00a0', ' ').strip().equals(name)).toList();
            assertEquals(1, found.size(), name + " in " + words);
            assertEquals(Face.BOLD_ITALIC, found.get(0).face());
            assertEquals("la", found.get(0).tag().orElseThrow().language());
        }
    }
}
