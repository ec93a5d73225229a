package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldSchemes;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.fold.Paper;
import org.fieldfold.fold.Side;
import org.fieldfold.pdf.Conformance;
import org.fieldfold.pdf.PdfJudge;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A fold scheme that a base brings along, from its file to the sheet; and one that no paper allows. */
class OwnSchemeTest {
    private static final Path RESOURCES = Path.of("src/test/resources/org/fieldfold/check");
    private static final Path SAMPLE = RESOURCES.resolve("samples/sheet-unknown/pass");

    @TempDir
    Path folder;
    private Path content;
    private Path scheme;

    @BeforeEach
    void lay() throws IOException {
        content = folder.resolve("content");
        scheme = content.resolve("schemes/roll-4.fold");
        FolderCopy.of(RESOURCES.resolve("base"), content);
        FolderCopy.of(SAMPLE, content);
    }

    private Compiler.Built compile(boolean proof) throws IOException {
        return Compiler.compile(new Compiler.Request(content, folder.resolve("out"), Optional.empty(), proof),
                what -> { });
    }

    @Test
    void isFoldedReadAndPrintedWithoutALineOfJava() throws IOException {
        Path build = compile(true).folder().orElseThrow();
        Imposition imposition = Imposition.of(FoldSchemes.read("roll-4.fold", Files.readString(scheme)),
                Paper.LEGAL, FlipEdge.SHORT);
        byte[] pdf = Files.readAllBytes(build.resolve("foldouts/potato.en.legal.pdf"));
        assertEquals(List.of(), PdfJudge.judge(pdf, imposition).faults());
        assertEquals(List.of(), Conformance.failures(pdf));
        // rolled in from the right: the cover is the outside of the leftmost panel, beside it the back; the
        // two flaps come next, as they are opened (worked out from the folds)
        assertEquals(List.of(3, 2, 8, 1), readings(imposition, Side.FRONT));
        assertEquals(List.of(4, 5, 6, 7), readings(imposition, Side.BACK));
    }

    private static List<Integer> readings(Imposition imposition, Side side) {
        return imposition.on(side).stream().map(PanelSlot::reading).toList();
    }

    @Test
    void aSchemeThatNoPaperAllowsIsAnErrorAndAProofLeavesItsGuidesOut() throws IOException {
        Files.writeString(scheme, Files.readString(scheme).replace("fold x2 right over\n", ""));
        Compiler.Built refused = compile(false);
        assertTrue(refused.folder().isEmpty());
        List<String> rules = refused.findings().stream().map(Finding::rule).toList();
        assertTrue(rules.contains("fold-scheme-broken"), refused.findings().toString());
        assertTrue(!rules.contains("sheet-unknown"), "said once, at the scheme: " + refused.findings());
        Path proof = compile(true).folder().orElseThrow();
        assertTrue(Files.notExists(proof.resolve("foldouts/potato.en.legal.pdf")));
        assertTrue(Files.exists(proof.resolve("handbook.en.html")));
    }
}
