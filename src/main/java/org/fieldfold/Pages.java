package org.fieldfold;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.check.PlainLanguage;
import org.fieldfold.content.ContentSchema;
import org.fieldfold.content.OpenData;
import org.fieldfold.edition.Comparison;
import org.fieldfold.edition.Worklist;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.handbook.CalendarReviewPage;
import org.fieldfold.handbook.ChangesPage;
import org.fieldfold.handbook.FiguresPage;
import org.fieldfold.handbook.Handbook;
import org.fieldfold.handbook.HandbookFile;
import org.fieldfold.handbook.NumbersPage;
import org.fieldfold.handbook.ReadingPage;
import org.fieldfold.handbook.ReviewPage;
import org.fieldfold.handbook.ThresholdsPage;
import org.fieldfold.handbook.WorklistPage;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.News;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.prose.Ease;
import org.fieldfold.report.FitReport;
import org.fieldfold.report.FitRow;
import org.fieldfold.report.Reading;
import org.fieldfold.source.Finding;

/** What is opened on a screen: the handbook in both forms, the review, and the base as open data. */
final class Pages {
    private final Map<String, byte[]> byPath = new LinkedHashMap<>();

    private Pages() {
    }

    /** Writes every page; touches no file, so that it may be done while guides are printed. */
    static Pages of(Tongues tongues, Ledgers ledgers, Optional<Comparison> changes,
            List<Finding> findings, List<FitRow> fit, boolean proof, Kept kept) {
        ContentBase base = tongues.base();
        Pages pages = new Pages();
        List<Reading> reading = new ArrayList<>();
        for (String language : tongues.languages()) {
            ContentBase said = tongues.in(language);
            reading.add(PlainLanguage.of(said, language, counting(kept)));
            Phrases phrases = Phrases.in(language);
            Calendars calendars = tongues.calendars(language);
            pages.byPath.putAll(OfficeCalendars.in(said, calendars, phrases));
            for (HandbookFile file : Handbook.write(said, phrases, News.of(changes), proof, kept, calendars)) {
                pages.byPath.put(file.path(), file.bytes());
            }
        }
        pages.byPath.put("review/index.html", ReviewPage.write(base, findings, fit, proof));
        pages.byPath.put("review/fit.json", FitReport.json(findings, fit).getBytes(StandardCharsets.UTF_8));
        pages.byPath.put("review/changes.html", ChangesPage.write(base.edition().value(), changes, proof));
        pages.byPath.put("review/worklist.html", WorklistPage.write(base.edition().value(),
                Worklist.of(base, findings, ledgers.before(base.edition().value().year())), proof));
        pages.byPath.put("review/thresholds.html", ThresholdsPage.write(base, proof));
        pages.byPath.put("review/numbers.html", NumbersPage.write(base, proof));
        pages.byPath.put("review/reading.html", ReadingPage.write(base.edition().value(), reading, proof));
        pages.byPath.put("review/figures.html", FiguresPage.write(base, proof));
        pages.byPath.put("review/weeks.html", CalendarReviewPage.write(base, tongues.calendars(), proof));
        pages.byPath.put("data/entries.json", OpenData.of(base).getBytes(StandardCharsets.UTF_8));
        pages.byPath.put("data/schema.json", kept.bytes(kept.key("schema"),
                () -> ContentSchema.ofBase().getBytes(StandardCharsets.UTF_8)));
        return pages;
    }

    private record Eases(List<Ease> each) {
    }

    private static PlainLanguage.Counting counting(Kept kept) {
        return (texts, language, count) -> kept.value(kept.key("ease", language, texts), Eases.class,
                () -> new Eases(count.get())).each();
    }

    void write(OutputFolder folder) throws IOException {
        for (Map.Entry<String, byte[]> page : byPath.entrySet()) {
            folder.write(page.getKey(), page.getValue());
        }
    }
}
