package org.fieldfold;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Function;
import java.util.function.Supplier;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.check.PlainLanguage;
import org.fieldfold.content.ContentSchema;
import org.fieldfold.content.OpenData;
import org.fieldfold.edition.Comparison;
import org.fieldfold.edition.Rereadings;
import org.fieldfold.edition.Worklist;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.handbook.CalendarReviewPage;
import org.fieldfold.handbook.ChangesPage;
import org.fieldfold.handbook.FiguresPage;
import org.fieldfold.handbook.Handbook;
import org.fieldfold.handbook.HandbookFiles;
import org.fieldfold.handbook.NumbersPage;
import org.fieldfold.handbook.ReadingPage;
import org.fieldfold.handbook.ReviewPage;
import org.fieldfold.handbook.ThresholdsPage;
import org.fieldfold.handbook.WorklistPage;
import org.fieldfold.manuscript.News;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.output.Published;
import org.fieldfold.report.FitReport;
import org.fieldfold.report.FitRow;
import org.fieldfold.report.Reading;
import org.fieldfold.source.Finding;

/** What is opened on a screen: the handbook in both forms, the review, and the base as open data. */
final class Pages {
    /**
     * More than most mail carries (common practice, no source); some 1,000 entries in full come to as much.
     */
    private static final int LARGEST_FILE = 20_000_000;

    private final Map<String, byte[]> byPath = new LinkedHashMap<>();
    private final List<Finding> findings;

    private Pages(List<Finding> findings) {
        this.findings = new ArrayList<>(findings);
    }

    /**
     * Writes every page, while guides are printed. Those of the handbook go into the build as they are written: of a
     * large base there are too many to be held.
     *
     * @throws UncheckedIOException when they cannot be written there
     */
    static Pages of(Tongues tongues, Ledgers ledgers, Optional<Comparison> changes,
            List<Finding> known, List<FitRow> fit, boolean proof, EarlierPages earlier,
            OutputFolder folder) {
        ContentBase base = tongues.base();
        Rereadings rereadings = earlier.rereadings(base, ledgers.before(base.edition().value().year()));
        Pages pages = new Pages(known);
        List<Finding> findings = pages.findings;
        List<Reading> reading = new ArrayList<>();
        PageParts parts = new PageParts(earlier, tongues, folder);
        for (String language : tongues.languages()) {
            ContentBase said = tongues.in(language);
            reading.add(PlainLanguage.of(said, language, (record, judge) ->
                    parts.texts("reading " + language + " " + record, language, judge)));
            Phrases phrases = Phrases.in(language);
            Calendars calendars = tongues.calendars(language);
            said.guides().keySet().forEach(guide -> parts.files("calendars " + language + " " + guide, "", language,
                    read -> OfficeCalendars.of(guide, read, calendars.of(read), phrases)));
            Handbook.write(said, phrases, earlier.book(tongues, phrases, News.of(changes), proof), earlier.kept(),
                    (path, madeOf, make) -> pages.handbook(path, madeOf, make, base, folder));
        }
        Collections.sort(findings);
        pages.byPath.put("review/index.html", ReviewPage.write(base, rereadings, findings, fit, proof));
        pages.byPath.put("review/fit.json", FitReport.json(findings, fit).getBytes(StandardCharsets.UTF_8));
        pages.byPath.put("review/changes.html", ChangesPage.write(base.edition().value(), changes, proof));
        pages.byPath.put("review/worklist.html", WorklistPage.write(base.edition().value(),
                Worklist.of(base, findings, rereadings), proof));
        pages.byPath.put("review/reading.html", ReadingPage.write(base.edition().value(), reading, proof));
        ofBase(tongues, proof).forEach((path, make) -> parts.files(path, proof ? "proof" : "",
                tongues.languages().get(0), read -> Map.of(path, make.apply(read))));
        pages.byPath.put("review/weeks.html", CalendarReviewPage.write(base, tongues.calendars(), (pest, write) ->
                parts.texts("weeks " + pest, tongues.languages().get(0), write), proof));
        parts.leave();
        return pages;
    }

    /** The files that are made of the base as it was written, and of nothing else. */
    private static SortedMap<String, Function<ContentBase, byte[]>> ofBase(Tongues tongues, boolean proof) {
        return new TreeMap<>(Map.of("review/thresholds.html", read -> ThresholdsPage.write(read, proof),
                "review/numbers.html", read -> NumbersPage.write(read, proof),
                "review/figures.html", read -> FiguresPage.write(read, proof),
                "data/entries.json", read -> OpenData.of(read).getBytes(StandardCharsets.UTF_8),
                "data/schema.json", read -> ContentSchema.ofBase().getBytes(StandardCharsets.UTF_8)));
    }

    /** Prints guides while pages are written; whatever fails, nobody writes any more when this is left. */
    static Pages beside(SetGuides guides, OutputFolder folder, Supplier<Pages> write)
            throws IOException {
        CompletableFuture<Pages> pages = CompletableFuture.supplyAsync(write);
        try {
            guides.print(folder);
        } finally {
            pages.handle((done, failed) -> done).join();
        }
        try {
            return pages.join();
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof UncheckedIOException unwritten) {
                throw unwritten.getCause();
            }
            throw failed;
        }
    }

    private HandbookFiles.Standing handbook(String path, Optional<String> madeOf, Supplier<byte[]> make,
            ContentBase base, OutputFolder folder) {
        try {
            Published file = folder.put(path, madeOf, make);
            tooLarge(base, path, Math.toIntExact(file.size())).ifPresent(findings::add);
            return new HandbookFiles.Standing(Math.toIntExact(file.size()), file.check());
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** @param size in bytes */
    static Optional<Finding> tooLarge(ContentBase base, String path, int size) {
        return size <= LARGEST_FILE || !path.matches("handbook[.][a-z]+[.]html") ? Optional.empty()
                : Optional.of(Finding.warning(base.edition().at("handbook"), "handbook-too-large", "expected " + path
                        + " of at most " + LARGEST_FILE / 1_000_000 + " MB, found " + (size + 999_999) / 1_000_000
                        + " MB: few telephones open it well, and most mail does not carry it",
                        "hand out the folder 'handbook' from a web address, which opens a page at a time, or "
                                + "split the base by crop"));
    }

    /** All that was known before, and what showed when pages were written; sorted. */
    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** Writes what does not stand in the build yet. */
    void write(OutputFolder folder) throws IOException {
        for (Map.Entry<String, byte[]> page : byPath.entrySet()) {
            folder.write(page.getKey(), page.getValue());
        }
    }
}
