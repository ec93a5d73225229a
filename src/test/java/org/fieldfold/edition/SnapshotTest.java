package org.fieldfold.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.ContentBase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The facts of the demo base, and the ledger that keeps them. */
class SnapshotTest {
    @TempDir
    private Path folder;

    private static ContentBase load(Path content) throws IOException {
        return BaseLoader.load(content).base().orElseThrow();
    }

    /** The demo base again, each text file changed in form. */
    private Path copy(String name, UnaryOperator<String> form) throws IOException {
        Path content = folder.resolve(name);
        try (Stream<Path> files = Files.walk(Path.of("content"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = content.resolve(Path.of("content").relativize(file).toString());
                Files.createDirectories(copy.getParent());
                if (file.toString().matches(".*\\.(yaml|md|svg)")) {
                    Files.writeString(copy, form.apply(Files.readString(file)));
                } else {
                    Files.copy(file, copy);
                }
            }
        }
        return content;
    }

    @Test
    void everyRecordOfTheDemoBaseHasItsFacts() throws IOException {
        ContentBase base = load(Path.of("content"));
        Snapshot facts = Snapshot.of(base);
        assertEquals(base.pests().keySet(), facts.records().get("pests").keySet());
        assertEquals(base.figures().keySet(), facts.records().get("figures").keySet());
        assertEquals("onion thrips", facts.name("pests", "onion-thrips"));
        Snapshot.Known thrips = facts.get("pests", "onion-thrips").orElseThrow();
        assertTrue(thrips.signature().word("reviser").isPresent());
        assertFalse(thrips.facts().get("reviser").isPresent());
    }

    @Test
    void lineEndsMarksAndFolderNamesAreNoFacts() throws IOException {
        Snapshot facts = Snapshot.of(load(Path.of("content")));
        assertTrue(facts.equals(Snapshot.of(load(copy("other", text ->
                "\uFEFF" + text.replace("\n", "\r\n"))))), "line ends");
        assertTrue(facts.equals(Snapshot.of(load(copy("moved", text -> text.startsWith("# yaml")
                ? "# moved\n\n\n" + text : text)))), "lines moved");
    }

    @Test
    void aLedgerReadsBackAsItWasWritten() throws IOException {
        TreeMap<String, String> outputs = new TreeMap<>();
        outputs.put("handbook.en.html", "00ff");
        Ledger ledger = new Ledger(2027, LocalDate.of(2027, 1, 15), "0.1.0",
                Optional.of(new Ledger.Follows(2026, "abc")), Snapshot.of(load(Path.of("content"))), outputs);
        Ledger.Read read = Ledger.read(ledger.text()).orElseThrow();
        assertTrue(read.sound());
        assertTrue(ledger.equals(read.ledger()));
        assertTrue(ledger.text().equals(read.ledger().text()));
        Ledger.Read bent = Ledger.read(ledger.text().replace("onion thrips", "onion  thrips")).orElseThrow();
        assertFalse(bent.sound());
        assertTrue(Ledger.read(ledger.text().replace("\n", "\r\n")).orElseThrow().sound(), "line ends");
        assertEquals(Optional.empty(), Ledger.read("{}"));
        assertEquals(Optional.empty(), Ledger.read("no ledger"));
    }

    /** RFC 8785, 3.2.3 and appendix: keys in the order of UTF-16 units, nothing escaped that need not be. */
    @Test
    void theCanonicalTextIsThatOfTheStandard() {
        // the sample of RFC 8785, 3.2.3, with strings only
        Fact.Group sample = Fact.group("\u20ac", Fact.word("Euro Sign"), "\r", Fact.word("Carriage Return"),
                "\ufb33", Fact.word("Hebrew Letter Dalet With Dagesh"), "1", Fact.word("One"),
                "\ud83d\ude00", Fact.word("Emoji: Grinning Face"), "\u0080", Fact.word("Control"),
                "\u00f6", Fact.word("Latin Small Letter O With Diaeresis"));
        assertEquals("{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\","
                + "\"\u00f6\":\"Latin Small Letter O With Diaeresis\",\"\u20ac\":\"Euro Sign\","
                + "\"\ud83d\ude00\":\"Emoji: Grinning Face\","
                + "\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}", sample.canonical());
        // 3.2.2.2: the sample string
        assertEquals("\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"",
                Fact.word("\u20ac$\u000f\nA'B\"\\\\\"/").canonical());
    }
}
