package org.fieldfold.content;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.fieldfold.prose.Passage;
import org.fieldfold.prose.Prose;
import org.fieldfold.pdf.DrawnFigure;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Finding;
import org.fieldfold.source.FindingPrinter;
import org.fieldfold.source.SourceFile;
import org.w3c.dom.Document;
import org.w3c.dom.NamedNodeMap;

/** What a fuzzer gives bytes to, and what must hold whatever they are. */
enum FuzzTarget {
    /** The first byte chooses the kind of file, the others are its content. */
    LOADER(FuzzTarget::loader),
    DRAWING(FuzzTarget::drawing),
    MARKDOWN(FuzzTarget::markdown),
    /** The first byte chooses the table, T that of translations; the others are what a spreadsheet wrote. */
    TABLE(FuzzTarget::table);

    /** A small base of its own, beside the samples of the rules. */
    static final Path BASE = Path.of("src/test/resources/org/fieldfold/check/base");
    static final Path KEPT = Path.of("src/test/resources/org/fieldfold/content/fuzz");
    static final char TRANSLATIONS = 'T';
    private static final FindingPrinter PRINTER = new FindingPrinter(false);
    /** Of SVG 1.1: what cannot hold an address. */
    private static final Set<String> FREE = Set.of("id", "class", "role");

    private final Consumer<byte[]> reading;

    FuzzTarget(Consumer<byte[]> reading) {
        this.reading = reading;
    }

    void read(byte[] input) {
        reading.accept(input);
    }

    /** The place of its kept inputs. */
    Path folder() {
        return KEPT.resolve(name().toLowerCase(Locale.ROOT));
    }

    /** Small first inputs, and those that once broke something. */
    List<Path> kept() {
        try (Stream<Path> files = Files.list(folder())) {
            return files.sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new IllegalStateException(what);
        }
    }

    /** A is the first choice, B the second: a kept input stays what it is when there are more. */
    private static int first(byte[] input, int choices) {
        return input.length == 0 ? 0 : Math.floorMod(input[0] - 'A', choices);
    }

    private static byte[] rest(byte[] input) {
        return Arrays.copyOfRange(input, Math.min(1, input.length), input.length);
    }

    private static void loader(byte[] input) {
        FileKind kind = FileKind.values()[first(input, FileKind.values().length)];
        FileReading reading = FileReading.of(new ContentFile("content/x", Path.of("x"), kind, "x"), rest(input));
        sound(reading.findings());
        reading.records().values().forEach(placed -> placed.spans().at().place());
        if (reading.findings().isEmpty()) {
            require(kind.isImage() || kind == FileKind.LEDGER || reading.unread().isEmpty(),
                    "no finding, and yet not read: " + reading.unread());
        }
    }

    /** Findings lie in their file, say what is expected and found, and print on lines of their own. */
    private static void sound(List<Finding> findings) {
        for (Finding finding : findings) {
            require(finding.span().end() <= finding.span().file().text().length(), "outside: " + finding);
            require(finding.message().contains("expected "), "unclear: " + finding);
            String printed = PRINTER.print(finding);
            require(printed.chars().noneMatch(c -> c < ' ' && c != '\n' || c == 0x7f || c >= 0x80 && c < 0xa0),
                    "moves the terminal: " + printed);
        }
    }

    private static void drawing(byte[] input) {
        String svg = new String(input, StandardCharsets.UTF_8);
        List<Finding> findings = DrawingReading.check(new SourceFile("content/figures/x.svg", svg));
        sound(findings);
        if (findings.isEmpty()) {
            leadsNowhere(input);
            DrawnFigure.problem(svg).ifPresent(problem -> require(problem.contains("expected "), problem));
        }
    }

    /** Judged by another reader of XML than the one that is under test uses. */
    private static void leadsNowhere(byte[] input) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(
                    new String(input, StandardCharsets.UTF_8).getBytes(StandardCharsets.UTF_8)));
            var elements = document.getElementsByTagName("*");
            for (int i = 0; i < elements.getLength(); i++) {
                NamedNodeMap attributes = elements.item(i).getAttributes();
                for (int j = 0; j < attributes.getLength(); j++) {
                    String name = attributes.item(j).getNodeName();
                    String value = attributes.item(j).getNodeValue().strip().toLowerCase(Locale.ROOT);
                    boolean free = FREE.contains(name) || name.startsWith("xmlns") || name.startsWith("data-")
                            || name.startsWith("aria-");
                    boolean local = name.endsWith("href") ? value.startsWith("#")
                            : !value.contains("//") && !value.contains("\\") && !value.contains("script:")
                                    && !value.replaceAll("url\\(\\s*['\"]?#", "").contains("url(");
                    require(free || local && !name.startsWith("on"), "leads outside: " + name + "=" + value);
                }
            }
        } catch (org.xml.sax.SAXException | javax.xml.parsers.ParserConfigurationException e) {
            throw new IllegalStateException("accepted, and yet not well-formed", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void markdown(byte[] input) {
        FileReading reading = FileReading.of(new ContentFile("content/chapters/x.md", Path.of("x"),
                FileKind.CHAPTER, "x"), ("# T\n\n" + new String(input, StandardCharsets.UTF_8))
                        .getBytes(StandardCharsets.UTF_8));
        sound(reading.findings());
        reading.records().values().forEach(placed ->
                links(((org.fieldfold.entry.Chapter) placed.value()).body()));
    }

    private static void links(Prose prose) {
        for (Passage passage : prose.passages()) {
            List<List<Run>> lines = passage instanceof Passage.Bullets bullets ? bullets.items()
                    : List.of(passage instanceof Passage.Heading heading ? heading.runs()
                            : ((Passage.Paragraph) passage).runs());
            for (Run run : lines.stream().flatMap(List::stream).toList()) {
                String link = run.link().toLowerCase(Locale.ROOT);
                require(link.isEmpty() || link.startsWith("#")
                        || link.matches("(?:https?://|mailto:|tel:)[^\\s\\p{Cntrl}]+"), "link '" + link + "'");
            }
        }
    }

    private static void table(byte[] input) {
        TableKind kind = TableKind.values()[first(input, TableKind.values().length)];
        boolean translations = input.length > 0 && input[0] == TRANSLATIONS;
        try {
            TableEdits edits = translations
                    ? Tables.edits(FuzzBase.folder(), FuzzBase.content(), FuzzBase.LANGUAGE, rest(input))
                    : Tables.edits(FuzzBase.folder(), FuzzBase.content(), kind, rest(input));
            require(edits.refusals().isEmpty() || edits.files().isEmpty(), "refused, and yet changed");
            edits.refusals().forEach(refusal -> require(refusal.contains("expected "), "unclear: " + refusal));
            for (Map.Entry<String, byte[]> file : edits.files().entrySet()) {
                String path = file.getKey();
                require(path.equals("active-ingredients.yaml") || path.matches("(es/)?(pests|practices)/[a-z-]+\\.yaml")
                        && translations == path.startsWith("es/"), path);
                FileKind kindOfFile = translations ? FileKind.TRANSLATION : path.startsWith("pests/") ? FileKind.PEST
                        : FileKind.ACTIVE_INGREDIENTS;
                FileReading changed = FileReading.of(new ContentFile("content/x", Path.of("x"), kindOfFile,
                        translations ? path.replaceFirst("\\.yaml$", "") : "x"), file.getValue());
                require(changed.findings().isEmpty(), edits.changes() + " broke the file: "
                        + changed.findings());
                changed.links().forEach(link -> require(FuzzBase.isEntry(link.entry()), "leads nowhere: " + link));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (EditRefused e) {
            throw new IllegalStateException(e);
        }
    }
}
