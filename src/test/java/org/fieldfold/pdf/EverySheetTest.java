package org.fieldfold.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldScheme;
import org.fieldfold.fold.FoldSchemes;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Lengths;
import org.fieldfold.fold.Paper;
import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.Samples;
import org.fieldfold.typeset.SetGuide;
import org.fieldfold.typeset.Setter;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A small guide on every scheme, every paper, for both ways of turning the sheet: 120 sheets. Our own judges
 * read all of them; veraPDF reads each scheme on two papers, and all 120 with
 * {@code -Dfieldfold.every-sheet=true} (a minute).
 */
class EverySheetTest {
    /** Narrow panels of a many-fold on a small paper take type that no guide of ours is set in. */
    private static final double SMALLEST = 5.5;
    /** On narrower panels the sample has words that are wider than the column; the build says so. */
    private static final double WIDE_ENOUGH = Lengths.points(60);
    private static final List<Sheet> ALL = new ArrayList<>();

    private record Sheet(Imposition imposition, SetGuide set, byte[] pdf) {
        String name() {
            return imposition.scheme().id() + " " + imposition.paper().id() + " " + imposition.flip();
        }
    }

    @BeforeAll
    static void print() {
        Press press = press(Samples.small(16, SMALLEST));
        for (FoldScheme scheme : FoldSchemes.all()) {
            for (Paper paper : Paper.values()) {
                Imposition first = Imposition.of(scheme, paper, FlipEdge.SHORT);
                Manuscript guide = Samples.small(first.slots().size(), SMALLEST);
                SetGuide set = new Setter(press.metrics(), press.shapes()).set(guide, first.slots());
                for (FlipEdge flip : FlipEdge.values()) {
                    Imposition imposition = Imposition.of(scheme, paper, flip);
                    ALL.add(new Sheet(imposition, set,
                            press.print(SampleGuide.job(imposition, set, Optional.empty()))));
                }
            }
        }
        assertEquals(12 * 5 * 2, ALL.size());
    }

    private static Press press(Manuscript guide) {
        Map<String, byte[]> figures = new HashMap<>();
        guide.sections().stream().flatMap(section -> section.blocks().stream())
                .filter(Block.Plates.class::isInstance).map(Block.Plates.class::cast)
                .flatMap(plates -> plates.plates().stream()).forEach(plate -> figures.put(plate.figure(),
                        SampleGuide.BEETLE.getBytes(StandardCharsets.UTF_8)));
        Press press = Press.of(figures);
        press.freeze(new TreeSet<>(IntStream.rangeClosed(' ', 0x2713)
                .filter(c -> press.metrics().has(Face.REGULAR, c) && (c < 0x2b0 || c > 0x2ff)).boxed()
                .toList()));
        return press;
    }

    @Test
    void isReadRightAndKeepsOffEdgesFoldsAndItself() throws IOException {
        List<String> faults = new ArrayList<>();
        for (Sheet sheet : ALL) {
            PdfJudge.judge(sheet.pdf(), sheet.imposition()).faults()
                    .forEach(fault -> faults.add(sheet.name() + ": " + fault));
            try (PDDocument document = Loader.loadPDF(sheet.pdf())) {
                SheetJudge.faults(document, sheet.imposition())
                        .forEach(fault -> faults.add(sheet.name() + ": " + fault));
            }
            boolean narrow = sheet.imposition().slots().stream()
                    .anyMatch(slot -> slot.uprightWidth() < WIDE_ENOUGH);
            sheet.set().findings().stream()
                    .filter(finding -> !narrow || !finding.rule().equals("word-too-wide"))
                    .forEach(finding -> faults.add(sheet.name() + ": " + finding.message()));
        }
        assertEquals(List.of(), faults);
    }

    @Test
    void theGuidesThatShipAreReadRightToo() throws IOException {
        List<String> faults = new ArrayList<>();
        for (Paper paper : List.of(Paper.LETTER, Paper.A4)) {
            for (DemoGuides.Printed guide : DemoGuides.on(paper)) {
                String where = guide.id() + " " + paper.id() + ": ";
                PdfJudge.judge(guide.pdf(), guide.imposition()).faults()
                        .forEach(fault -> faults.add(where + fault));
                try (PDDocument document = Loader.loadPDF(guide.pdf())) {
                    SheetJudge.faults(document, guide.imposition())
                            .forEach(fault -> faults.add(where + fault));
                }
            }
        }
        assertEquals(List.of(), faults);
    }

    @Test
    void passesBothStandards() {
        boolean every = Boolean.getBoolean("fieldfold.every-sheet");
        List<String> faults = new ArrayList<>();
        TreeSet<String> papers = new TreeSet<>();
        for (int i = 0; i < ALL.size(); i++) {
            // ten sheets a scheme, two a paper: from scheme to scheme the papers and the edges go round
            boolean chosen = every || (i % 10 + i / 10) % 5 == 0;
            if (chosen) {
                Sheet sheet = ALL.get(i);
                papers.add(sheet.imposition().paper().id() + sheet.imposition().flip());
                Conformance.failures(sheet.pdf()).forEach(fault -> faults.add(sheet.name() + ": " + fault));
            }
        }
        assertEquals(10, papers.size(), "every paper, turned on both edges");
        assertEquals(List.of(), faults);
    }

    /**
     * The tag tree as it stands in the file, where panels stand on their heads. After a wanted change:
     * {@code mvn test -Dtest=EverySheetTest -Dgolden.refresh=true}, and read the difference.
     */
    @ParameterizedTest
    @ValueSource(strings = {"booklet-8", "french", "map"})
    void treesOfSheetsWithTurnedPanels(String scheme) throws IOException {
        Sheet sheet = ALL.stream().filter(one -> one.name().equals(scheme + " tabloid LONG")).findFirst()
                .orElseThrow();
        Path golden = Path.of("src/test/resources/org/fieldfold/pdf/tree-" + scheme + ".txt");
        try (PDDocument document = Loader.loadPDF(sheet.pdf())) {
            String found = TreeText.of(FileTree.of(document), sheet.imposition());
            if (Boolean.getBoolean("golden.refresh")) {
                Files.createDirectories(golden.getParent());
                Files.writeString(golden, found);
            }
            assertTrue(found.contains(", turned 180"), found);
            assertEquals(Files.readString(golden).replace("\r\n", "\n"), found);
        }
    }
}
