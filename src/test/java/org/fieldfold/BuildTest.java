package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.fieldfold.pdf.Conformance;
import org.fieldfold.report.Sha256;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The main job, whole: the demo base from its files to everything that people hold. */
class BuildTest {
    @TempDir
    static Path folder;
    private static Compiler.Built built;
    private static Path build;

    @BeforeAll
    static void compile() throws IOException {
        built = compile(Path.of("content"), folder.resolve("first"), false);
        build = built.folder().orElseThrow(() -> new AssertionError(built.findings()));
    }

    private static Compiler.Built compile(Path content, Path out, boolean proof) throws IOException {
        return Compiler.compile(new Compiler.Request(content, out, Optional.empty(), proof), what -> { });
    }

    @Test
    void theDemoBaseHasNoErrorAndNoWarning() {
        List<Finding> loud = built.findings().stream()
                .filter(finding -> finding.severity() != Severity.INFO).toList();
        assertEquals(List.of(), loud);
    }

    @Test
    void everyGuideComesOnBothPapersForBothKindsOfPrinter() throws IOException {
        try (Stream<Path> guides = Files.list(Path.of("content/guides"))) {
            for (Path guide : guides.toList()) {
                String id = guide.getFileName().toString().replace(".yaml", "");
                for (String copy : List.of(".letter.pdf", ".a4.pdf", ".letter.long-edge.pdf",
                        ".a4.long-edge.pdf")) {
                    for (String language : List.of(".en", ".es")) {
                        assertTrue(Files.size(build.resolve("foldouts/" + id + language + copy)) > 10_000,
                                id + language + copy);
                    }
                }
            }
        }
    }

    @Test
    void theSameContentGivesTheSameBytesInAnyPlace() throws IOException {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(new Locale("tr", "TR"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            Path again = compile(Path.of("content"), folder.resolve("again"), false).folder().orElseThrow();
            assertEquals(hashes(build), hashes(again));
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void theManifestNamesEveryFileWithItsHash() throws IOException {
        JsonNode manifest = JsonMapper.shared().readTree(Files.readString(build.resolve("manifest.json")));
        Map<String, String> listed = new TreeMap<>();
        manifest.get("outputs").forEach(file ->
                listed.put(file.get("path").asString(), file.get("sha256").asString()));
        Map<String, String> found = hashes(build);
        found.remove("manifest.json");
        assertEquals(found, listed);
        assertTrue(manifest.get("inputs").size() > 100);
        manifest.get("inputs").forEach(file -> assertTrue(file.get("sha256").asString().length() == 64));
    }

    @Test
    void aBaseWithAnErrorIsRefusedAndTheLastBuildStays() throws IOException {
        Path content = copyOfContent("broken");
        Path out = folder.resolve("kept");
        Map<String, String> before = hashes(compile(content, out, false).folder().orElseThrow());
        Path entry = content.resolve("pests/leek-moth.yaml");
        Files.writeString(entry, Files.readString(entry).replace("\nmonitoring:", "\nmonitorin:"));

        Compiler.Built refused = compile(content, out, false);
        assertTrue(refused.folder().isEmpty());
        assertTrue(refused.findings().stream().anyMatch(finding -> finding.rule().equals("unknown-key")
                && finding.hint().contains("monitoring")), refused.findings().toString());
        assertEquals(before, hashes(out.resolve("2027")));

        Path proof = compile(content, out, true).folder().orElseThrow();
        String handbook = Files.readString(proof.resolve("handbook.en.html"));
        assertTrue(handbook.contains("PROOF"));
        assertFalse(Files.readString(build.resolve("handbook.en.html")).contains("PROOF"));
    }

    /** What a reader's machine says of a sheet: its logical tree, in reading order over both sides. */
    @Test
    void pdfinfoWalksThePotatoGuideInReadingOrder() throws Exception {
        Outside.need("pdfinfo");
        Path golden = Path.of("src/test/resources/org/fieldfold/potato.en.letter.struct.txt");
        Outside.Said said = Outside.run("pdfinfo", "-struct-text",
                build.resolve("foldouts/potato.en.letter.pdf").toString());
        String tree = said.text().substring(said.text().indexOf("Document"));
        if (Boolean.getBoolean("fieldfold.refresh")) {
            Files.writeString(golden, tree, StandardCharsets.UTF_8);
        }
        assertEquals(Files.readString(golden), tree,
                "refresh with mvn test -Dtest=BuildTest -Dfieldfold.refresh=true");
        int before = -1;
        for (String step : List.of("Find it, count it, decide", "How to scout", "Colorado potato beetle",
                "1 Cultural", "2 Exclusion and natural enemies", "3 Insecticide, last", "Potato leafhopper",
                "Green peach aphid", "Before any insecticide")) {
            int at = tree.indexOf(step, before + 1);
            assertTrue(at > before, step + " is not behind what is read before it");
            before = at;
        }
    }

    /** The same order in Spanish, under the document's own language. */
    @Test
    void pdfinfoWalksTheSpanishPotatoGuideInReadingOrder() throws Exception {
        Outside.need("pdfinfo");
        Path sheet = build.resolve("foldouts/potato.es.letter.pdf");
        String tree = Outside.run("pdfinfo", "-struct-text", sheet.toString()).text();
        assertTrue(new String(Files.readAllBytes(sheet), StandardCharsets.ISO_8859_1).contains("/Lang (es)"));
        int before = -1;
        for (String step : List.of("Encuentre, cuente, decida", "Cómo monitorear", "Escarabajo de la papa",
                "1 Cultural", "2 Exclusión y enemigos naturales", "3 Insecticida, al final",
                "La etiqueta es la ley", "Chicharrita de la papa", "Pulgón verde del durazno",
                "Antes de cualquier insecticida")) {
            int at = tree.indexOf(step, before + 1);
            assertTrue(at > before, step + " is not behind what is read before it");
            before = at;
        }
        assertFalse(tree.contains("[en]"), "a text that is not translated");
    }

    /**
     * ISO 14289-1 and ISO 19005-2, conformance level A, as veraPDF reads them; our own judge reads the order.
     */
    @Test
    void everySheetKeepsTheStandardsOfAccessibleAndLastingFiles() throws IOException {
        for (Path sheet : sheets()) {
            assertEquals(List.of(), Conformance.failures(Files.readAllBytes(sheet)), sheet.toString());
        }
    }

    @Test
    void qpdfFindsEverySheetSound() throws Exception {
        Outside.need("qpdf");
        for (Path sheet : sheets()) {
            Outside.Said said = Outside.run("qpdf", "--check", sheet.toString());
            assertEquals(0, said.status(), said.text());
        }
    }

    @Test
    void aTelephoneReadsTheCodeOnEverySheet() throws Exception {
        Outside.need("pdftoppm");
        Outside.need("zbarimg");
        for (Path sheet : sheets()) {
            if (sheet.toString().endsWith(".letter.pdf") && !sheet.toString().contains("print-me-first")) {
                Path picture = folder.resolve(sheet.getFileName() + ".png");
                Outside.run("pdftoppm", "-r", "150", "-f", "1", "-l", "1", "-singlefile", "-gray", "-png",
                        sheet.toString(), picture.toString().replace(".png", ""));
                String read = Outside.run("zbarimg", "-q", "--raw", picture.toString()).text();
                assertTrue(read.lines().anyMatch("https://handbook.marrowvalley.example/2027"::equals),
                        sheet + " reads " + read);
            }
        }
    }

    private static List<Path> sheets() throws IOException {
        try (Stream<Path> files = Files.list(build.resolve("foldouts"))) {
            List<Path> sheets = new ArrayList<>(files.sorted().toList());
            assertTrue(sheets.size() >= 80, sheets.toString());
            return sheets;
        }
    }

    private static Path copyOfContent(String name) throws IOException {
        return FolderCopy.of(Path.of("content"), folder.resolve(name).resolve("content"));
    }

    private static Map<String, String> hashes(Path build) throws IOException {
        Map<String, String> hashes = new TreeMap<>();
        try (Stream<Path> files = Files.walk(build)) {
            files.filter(Files::isRegularFile).forEach(file -> {
                try {
                    hashes.put(build.relativize(file).toString().replace('\\', '/'),
                            Sha256.of(Files.readAllBytes(file)));
                } catch (IOException unreadable) {
                    throw new UncheckedIOException(unreadable);
                }
            });
        }
        return hashes;
    }
}
