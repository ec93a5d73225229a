package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.check.KeptFindings;
import org.fieldfold.check.Rulebook;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.content.KeptReadings;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.edition.Comparison;
import org.fieldfold.edition.Ledger;
import org.fieldfold.edition.Snapshot;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.manuscript.Alphabet;
import org.fieldfold.manuscript.HandbookWriter;
import org.fieldfold.manuscript.KeptPages;
import org.fieldfold.manuscript.News;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.source.Finding;

/**
 * Whatever is saved in a base, what is kept from one save to the next gives the same findings, at the same
 * lines, the same changes since the last edition and the same handbook as a base that is read for the first time.
 * Each try edits what the tries before it have left; now and then a file goes back to what it was.
 */
class KeptJudgingProperties {
    private static Path folder;
    private static Follower whole;
    private static Follower small;
    private static final Set<List<String>> SEEN = new HashSet<>();
    private static final List<Integer> ASKED = new ArrayList<>();
    private static final List<Integer> OTHERS = new ArrayList<>();

    /** A base, and what is kept of it from save to save. */
    private record Follower(Path content, RandomSaves saves, KeptReadings readings, KeptJudging judging,
            KeptPages pages, AtomicReference<Calendars> dates, AtomicReference<byte[]> written) {
        static Follower of(Path content) throws IOException {
            ledger(content);
            Follower follower = new Follower(content, new RandomSaves(content), new KeptReadings(),
                    new KeptJudging(), new KeptPages(), new AtomicReference<>(),
                    new AtomicReference<>(new byte[0]));
            follower.holds("as it was laid");
            return follower;
        }

        void holds(String edited) throws IOException {
            LoadedBase loaded = readings.load(content);
            Compiler.Checked kept = Compiler.judge(loaded, content, Optional.empty(), judging);
            Compiler.Checked anew = Compiler.check(content, Optional.empty());
            assertEquals(lines(anew.findings()), lines(kept.findings()), edited);
            SEEN.add(lines(kept.findings()));
            ASKED.add(judging.asked().values().stream().mapToInt(Integer::intValue).sum());
            if (anew.base().isPresent()) {
                holdsInAnotherProcess(edited);
            }
            if (anew.base().isPresent() && Languages.findings(anew.base().get()).isEmpty()) {
                holdsBook(anew.base().get(), kept.base().orElseThrow(), loaded, edited);
            }
            if (anew.base().isPresent() && anew.ledgers().of(2026).isPresent()) {
                Ledger last = anew.ledgers().of(2026).get();
                Snapshot now = judging.facts(loaded, kept.base().orElseThrow());
                assertEquals(Snapshot.of(anew.base().get()), now, edited);
                assertEquals(Comparison.of("", last.facts(), "", now),
                        judging.changes(kept.ledgers().of(2026).orElseThrow(), now), edited);
            }
        }

        /** A process that goes on with what the last one wrote down finds the same. */
        private void holdsInAnotherProcess(String edited) throws IOException {
            LoadedBase loaded = BaseLoader.load(content);
            KeptFindings findings = new KeptFindings(written.get());
            ContentBase base = loaded.base().orElseThrow();
            LocalDate asOf = base.edition().value().issued();
            assertEquals(lines(Rulebook.check(base, asOf)), lines(findings.check(base, asOf,
                    KeptJudging.hashes(loaded))), edited);
            OTHERS.add(findings.asked().values().stream().mapToInt(Integer::intValue).sum());
            written.set(findings.bytes().orElseThrow());
        }

        /** The handbook is that of a base of which nothing was written before. */
        private void holdsBook(ContentBase anew, ContentBase kept, LoadedBase loaded, String edited) {
            String language = anew.edition().value().languages().get(0);
            Phrases phrases = Phrases.in(language);
            dates.updateAndGet(known -> known == null ? new Calendars(kept) : known.after(kept));
            assertEquals(new HandbookWriter(Alphabet.of(language).order(anew), phrases, News.NONE).write(false)
                    .pages().toString(), pages.write(kept, KeptJudging.hashes(loaded), phrases, News.NONE, dates.get(),
                    false).pages().toString(), edited);
        }
    }

    /** Places are compared as a reader sees them: a finding at a line that moved must have moved too. */
    private static List<String> lines(List<Finding> findings) {
        return findings.stream().map(finding -> finding.span().place() + ": " + finding + " ["
                + finding.span().file().lineText(finding.span().line()) + "] " + finding.hint()).toList();
    }

    /** The edition before, in which one entry said something else. */
    private static void ledger(Path content) throws IOException {
        Path file = content.resolve("pests/leek-moth.yaml");
        String now = Files.readString(file);
        Files.writeString(file, now.replaceFirst("\\d mm", "9 mm").replaceFirst("pocket: (\\w)", "pocket: Now $1"));
        Snapshot before = Snapshot.of(BaseLoader.load(content).base().orElseThrow());
        Files.writeString(file, now);
        Files.createDirectories(content.resolve("issued"));
        Files.writeString(content.resolve("issued/2026.json"), new Ledger(2026, LocalDate.of(2026, 1, 15),
                Compiler.VERSION, Optional.empty(), before, new TreeMap<>()).text());
    }

    @BeforeContainer
    static void lay() throws IOException {
        folder = Files.createTempDirectory("judging");
        whole = Follower.of(FolderCopy.of(Path.of("content"), folder.resolve("whole/content")));
        SmallBase.lay(folder.resolve("small/content"));
        small = Follower.of(folder.resolve("small/content"));
    }

    /** Had every save given the same findings, or every rule been put each time, nothing would be shown. */
    @AfterContainer
    static void clear() throws IOException {
        int all = ASKED.get(0);
        assertTrue(SEEN.size() > 10, "different findings: " + SEEN.size());
        for (List<Integer> asked : List.of(ASKED, OTHERS)) {
            assertTrue(asked.stream().sorted().toList().get(asked.size() / 2) < all / 10, asked.toString());
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Collections.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    @Property(tries = 6, shrinking = ShrinkingMode.OFF)
    void ofTheWholeDemoBase(@ForAll long seed) throws IOException {
        Random random = new Random(seed);
        StringBuilder edited = new StringBuilder();
        for (int i = random.nextInt(4); i >= 0; i--) {
            edited.append(whole.saves().save(random)).append('\n');
        }
        whole.holds(edited.toString());
    }

    @Property(tries = 30, shrinking = ShrinkingMode.OFF)
    void ofASmallBaseSaveBySave(@ForAll long seed) throws IOException {
        small.holds(small.saves().save(new Random(seed)));
    }
}
