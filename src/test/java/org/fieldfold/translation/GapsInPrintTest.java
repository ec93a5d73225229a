package org.fieldfold.translation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fieldfold.Compiler;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A text without translation on a printed sheet: seen by its mark, heard in its own language. */
class GapsInPrintTest {
    @TempDir
    Path folder;

    @Test
    void aGapIsMarkedAndTaggedInTheBaseLanguage() throws IOException {
        SampleBase sample = SampleBase.in(folder.resolve("content"));
        sample.draft();
        sample.translate("pests/potato-beetle.yaml", "controls/0/measure", "Siembre papa en otro campo.");
        Path build = Compiler.compile(new Compiler.Request(sample.folder(), folder.resolve("out"),
                Optional.empty(), true), what -> { }).folder().orElseThrow();
        try (PDDocument sheet =
                Loader.loadPDF(build.resolve("foldouts/potato.es.letter.pdf").toFile())) {
            assertEquals("es", sheet.getDocumentCatalog().getLanguage());
            List<String> languages = new ArrayList<>();
            languages(sheet.getDocumentCatalog().getStructureTreeRoot(), languages);
            assertTrue(languages.contains("en") && languages.contains("la"), languages.toString());
            String words = new PDFTextStripper().getText(sheet).replaceAll("\\s+", " ");
            assertTrue(words.contains("Siembre papa en otro campo."), words);
            assertTrue(words.contains("[en] Cover from planting on."), words);
        }
    }

    private static void languages(PDStructureNode node, List<String> found) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                Optional.ofNullable(element.getLanguage()).ifPresent(found::add);
                languages(element, found);
            }
        }
    }
}
