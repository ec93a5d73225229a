package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.edition.EarlierTexts;
import org.fieldfold.edition.Ledger;
import org.fieldfold.edition.Snapshot;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.translation.BaseText;
import org.fieldfold.translation.BaseTexts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who translates a text again sees what it said when it was translated, and what it says now. */
class DueTranslationTest {
    private static final String THRIPS = "pests/onion-thrips";

    @TempDir
    private Path folder;

    private static Ledger issued(Path content) throws IOException {
        return new Ledger(2026, LocalDate.of(2026, 1, 15), Compiler.VERSION, Optional.empty(),
                Snapshot.of(base(content)), new TreeMap<>());
    }

    private static ContentBase base(Path content) throws IOException {
        return BaseLoader.load(content).base().orElseThrow();
    }

    @Test
    void everyTextOfAnIssuedEditionIsKnownByWhatATranslationNamesItBy() throws IOException {
        Path demo = Path.of("content");
        EarlierTexts earlier = EarlierTexts.of(List.of(issued(demo)));
        // a ledger counts the items of a chapter's list in a way of its own, so bodies of chapters may be unknown
        List<BaseText> texts = BaseTexts.of(base(demo)).values().stream().flatMap(List::stream)
                .filter(text -> !text.path().equals("body")).toList();
        assertTrue(texts.size() > 1_000, "all of the demonstration");
        assertEquals(List.of(), texts.stream().filter(text -> earlier.of(text.hash())
                .filter(words -> BaseText.hash(words).equals(text.hash())).isEmpty())
                .map(BaseText::path).toList());
    }

    @Test
    void whatIsDueStandsBesideOldAndNew() throws IOException {
        Path content = folder.resolve("content");
        FolderCopy.of(Path.of("content"), content);
        Path ledger = content.resolve("issued/2026.json");
        Files.createDirectories(ledger.getParent());
        Files.writeString(ledger, issued(content).text());
        Path file = content.resolve(THRIPS + ".yaml");
        Files.writeString(file, Files.readString(file).replace("Slim splinter,", "Thin sliver,"));

        String draft = Compiler.translations(content, "es", Optional.of(THRIPS)).get(0).text();
        int old = draft.indexOf("  # translated was:\n  # Slim splinter,");
        int now = draft.indexOf("  # and it is now:\n  # Thin sliver,");
        assertTrue(old > 0 && now > old, draft);
        assertEquals(1, draft.split("# translated was:", -1).length - 1, "nothing else is due");
    }
}
