package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fieldfold.pdf.Conformance;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What county offices get from a build: their guides with their own panel, on their paper. */
class OfficeCopiesTest {
    private static final Path CONTENT = Path.of("content");
    @TempDir
    Path folder;
    private Path content;

    /** A small base: two guides, two offices. */
    @BeforeEach
    void copyContent() throws IOException {
        content = FolderCopy.of(CONTENT, folder.resolve("content"), file -> {
            String path = CONTENT.relativize(file).toString().replace('\\', '/');
            return !path.startsWith("offices/") && !path.startsWith("guides/")
                    || List.of("offices/lowbridge.yaml", "offices/northmoor.yaml", "guides/potato.yaml",
                            "guides/strawberry.yaml").contains(path);
        });
    }

    private Compiler.Built compile(String out) throws IOException {
        return Compiler.compile(new Compiler.Request(content, folder.resolve(out), Optional.empty(), true),
                what -> { });
    }

    private void change(String file, String from, String to) throws IOException {
        String text = Files.readString(content.resolve(file));
        assertTrue(text.contains(from), file + " has no " + from);
        Files.writeString(content.resolve(file), text.replace(from, to), StandardCharsets.UTF_8);
    }

    private static List<String> in(Path office) throws IOException {
        try (Stream<Path> files = Files.list(office)) {
            return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".pdf")
                    && !name.startsWith("print-me-first"))
                    .sorted().toList();
        }
    }

    private static String words(Path sheet) throws IOException {
        try (PDDocument document = Loader.loadPDF(sheet.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void anOfficeGetsItsGuidesOnItsPaperWithItsPanel() throws IOException {
        change("offices/lowbridge.yaml", "contact:", "guides: [strawberry]\nflip: long\ncontact:");
        Path offices = compile("out").folder().orElseThrow().resolve("offices");
        assertEquals(List.of("strawberry.en.letter.pdf"), in(offices.resolve("lowbridge")));
        assertEquals(List.of("potato.en.a4.pdf", "strawberry.en.a4.pdf"), in(offices.resolve("northmoor")));
        Path sheet = offices.resolve("lowbridge/strawberry.en.letter.pdf");
        String words = words(sheet);
        assertTrue(words.contains("555-0111") && words.contains("12 Mill Lane"), words);
        assertFalse(words.contains("555-0155"), words);
        String file = Files.readString(sheet, StandardCharsets.ISO_8859_1);
        assertTrue(file.contains("DuplexFlipLongEdge"), "turned on the long edge");
        for (String[] first : new String[][] {{"", "DuplexFlipLongEdge"},
                {".short-edge", "DuplexFlipShortEdge"}}) {
            Path shown = offices.resolve("lowbridge/print-me-first.letter" + first[0] + ".pdf");
            assertTrue(Files.readString(shown, StandardCharsets.ISO_8859_1).contains(first[1]), first[1]);
        }
        assertEquals(List.of(), Conformance.failures(Files.readAllBytes(sheet)));
    }

    /** Colorado potato beetle, adult 10 mm: 25.4 mm are an inch. */
    @Test
    void anOfficePrintsInItsUnitsAndAllOthersAsBefore() throws IOException {
        Path customary = compile("customary").folder().orElseThrow();
        change("offices/lowbridge.yaml", "units: customary\n", "");
        change("offices/northmoor.yaml", "units: metric\n", "");
        Path before = compile("before").folder().orElseThrow();
        String copy = "offices/lowbridge/potato.en.letter.pdf";
        String inches = "(?s).*adult,\\s[^\\n]*\\d/(8|16|32)\\sin\\b.*";
        String mm = "(?s).*adult,\\s[\\d.–]+\\smm\\b.*";
        assertTrue(words(customary.resolve(copy)).matches(inches), words(customary.resolve(copy)));
        assertFalse(words(customary.resolve(copy)).matches(mm), words(customary.resolve(copy)));
        assertTrue(words(before.resolve(copy)).matches(mm), words(before.resolve(copy)));
        assertFalse(words(before.resolve(copy)).matches(inches));
        String generic = "foldouts/potato.en.letter.pdf";
        assertArrayEquals(Files.readAllBytes(before.resolve(generic)), Files.readAllBytes(customary.resolve(generic)));
    }

    @Test
    void anOfficeCopyIsTheSameWhoeverElseIsPrinted() throws IOException {
        String copy = "offices/northmoor/strawberry.en.a4.pdf";
        byte[] among = Files.readAllBytes(compile("among").folder().orElseThrow().resolve(copy));
        Files.delete(content.resolve("offices/lowbridge.yaml"));
        byte[] alone = Files.readAllBytes(compile("alone").folder().orElseThrow().resolve(copy));
        assertArrayEquals(among, alone);
    }

    @Test
    void aPanelThatIsTooLongIsFoundInItsOfficesFile() throws IOException {
        String street = "\"The long name of a street with several houses\"";
        change("offices/northmoor.yaml", "\"Moor Hall, Peat Street\"", String.join(", ",
                Collections.nCopies(60, street)));
        List<Finding> over = compile("out").findings().stream()
                .filter(finding -> finding.rule().equals("does-not-fit")).toList();
        assertFalse(over.isEmpty());
        for (Finding finding : over) {
            assertEquals("offices/northmoor.yaml", finding.span().file().path()
                    .replaceFirst("^content/", ""), finding.toString());
        }
    }
}
