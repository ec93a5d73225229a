package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The handbook as a book, judged by EPUBCheck 5.3.0 (EPUB 3.3), as a process of its own. */
class EpubTest {
    private static final HandbookFile BOOK = Shipped.FILES.stream()
            .filter(file -> file.path().equals("handbook.en.epub")).findFirst().orElseThrow();

    @TempDir
    Path folder;

    @Test
    void theCheckerFindsNothing() throws IOException, InterruptedException {
        String said = judge("book.epub", BOOK.bytes());
        assertTrue(said.contains("\"nFatal\" : 0") && said.contains("\"nError\" : 0")
                && said.contains("\"nWarning\" : 0"), said);
    }

    @Test
    void theCheckerSeesABrokenLink() throws IOException, InterruptedException {
        Map<String, byte[]> files = files(BOOK.bytes());
        String start = new String(files.get("book/index.xhtml"), StandardCharsets.UTF_8);
        assertTrue(start.contains("href=\"look.xhtml\""));
        files.put("book/index.xhtml", start.replace("href=\"look.xhtml\"", "href=\"nowhere.xhtml\"")
                .getBytes(StandardCharsets.UTF_8));
        files.remove("mimetype");
        files.remove("META-INF/container.xml");
        byte[] broken = EpubZip.of("book/book.opf", files.entrySet().stream()
                .map(file -> new EpubZip.Item(file.getKey(), EpubZip.packed(file.getValue()))).toList());
        String said = judge("broken.epub", broken);
        assertFalse(said.contains("\"nError\" : 0"), said);
    }

    @Test
    void hostileWordsComeOutAsText() throws Exception {
        HandbookFile hostile = Handbook.write(Hostile.of(Shipped.BASE), Shipped.PHRASES, true).stream()
                .filter(file -> file.path().endsWith(".epub")).findFirst().orElseThrow();
        JsonNode messages = JsonMapper.builder().build().readTree(judge("hostile.epub", hostile.bytes()))
                .get("messages");
        // the drawings of this base hold script as well, which the loader of a content base refuses
        messages.forEach(message -> message.get("locations").forEach(place ->
                assertTrue(place.get("path").asString().endsWith(".svg"), message.toString())));
    }

    @Test
    void saysWhatItIsFirstAndIsWrittenTheSameTwice() throws IOException {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(BOOK.bytes()))) {
            ZipEntry first = zip.getNextEntry();
            assertEquals("mimetype", first.getName());
            assertEquals(ZipEntry.STORED, first.getMethod());
        }
        HandbookFile again = Handbook.write(Shipped.BASE, Shipped.PHRASES, false).stream()
                .filter(file -> file.path().endsWith(".epub")).findFirst().orElseThrow();
        assertArrayEquals(BOOK.bytes(), again.bytes());
    }

    @Test
    void tierThreeStandsBehindItsCautionAndWaitsForNoTick() throws IOException {
        String entry = new String(files(BOOK.bytes()).get("book/onion-thrips.xhtml"), StandardCharsets.UTF_8);
        int tier = entry.indexOf("tier tier3");
        int caution = entry.indexOf("class=\"caution\"", tier);
        int measures = entry.indexOf("class=\"measures\"", tier);
        assertTrue(tier > 0 && caution > tier && measures > caution);
        assertFalse(entry.contains("<input"));
    }

    @Test
    void everyPageIsInTheContents() throws IOException {
        Map<String, byte[]> files = files(BOOK.bytes());
        String contents = new String(files.get("book/contents.xhtml"), StandardCharsets.UTF_8);
        files.keySet().stream().filter(path -> path.endsWith(".xhtml") && !path.endsWith("contents.xhtml"))
                .forEach(path -> assertTrue(
                        contents.contains("href=\"" + path.substring("book/".length()) + "\""), path));
    }

    private static Map<String, byte[]> files(byte[] book) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(book))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), zip.readAllBytes());
            }
        }
        return files;
    }

    private String judge(String name, byte[] book) throws IOException, InterruptedException {
        Path file = folder.resolve(name);
        Path report = folder.resolve(name + ".json");
        Files.write(file, book);
        // the pom puts the checker's own Saxon there
        String classes = String.join(File.pathSeparator, Path.of("target", "epubcheck", "*").toString(),
                System.getProperty("java.class.path"));
        Process checker = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp", classes, "com.adobe.epubcheck.tool.Checker", file.toString(), "--json",
                report.toString()).redirectErrorStream(true).start();
        String said = new String(checker.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(checker.waitFor(5, TimeUnit.MINUTES));
        assertTrue(Files.exists(report) && said.contains("EPUBCheck completed") && !said.contains("Exception"),
                said);
        return Files.readString(report);
    }
}
