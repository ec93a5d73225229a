package org.fieldfold.manuscript;

import java.net.URI;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fieldfold.calendar.EntryCalendar;
import org.fieldfold.calendar.Expected;
import org.fieldfold.calendar.GuideCalendar;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.Station;
import org.fieldfold.scouting.calendar.CalendarFile;
import org.fieldfold.scouting.calendar.CalendarLine;
import org.fieldfold.scouting.calendar.EventDates;

/**
 * Writes the calendar of a guide for a telephone's own calendar: each event as the days from early to late,
 * and for each entry the day on which to begin to look. It says of itself what it is, as it is read apart
 * from the guide.
 */
public final class CalendarDownload {
    private final Edition edition;
    private final Phrases phrases;
    private final CalendarWords words;

    /** @param edition in the language of the phrases */
    public CalendarDownload(Edition edition, Phrases phrases) {
        this.edition = edition;
        this.phrases = phrases;
        this.words = new CalendarWords(phrases);
    }

    /** The file's text; the same content gives the same text. */
    public String write(Guide guide, GuideCalendar calendar) {
        List<CalendarFile.Entry> entries = new ArrayList<>();
        for (EntryCalendar row : calendar.rows()) {
            for (int i = 0; i < row.looks().size(); i++) {
                entries.add(look(guide, calendar, row, i));
            }
            for (int i = 0; i < row.events().size(); i++) {
                Expected expected = row.events().get(i);
                String key = expected.event().key().orElse("event-" + (i + 1));
                expected.bar().ifPresent(bar -> entries.add(event(guide, calendar, row, expected, bar, key)));
            }
        }
        String product = "-//" + edition.publisher().replace("/", " ") + "//"
                + edition.title().replace("/", " ") + " " + edition.year() + "//"
                + phrases.language().toUpperCase(Locale.ROOT);
        return new CalendarFile(product, edition.issued(), entries).text();
    }

    private CalendarFile.Entry look(Guide guide, GuideCalendar calendar, EntryCalendar row, int number) {
        EntryCalendar.Look look = row.looks().get(number);
        LocalDate day = look.window().first().atYear(edition.year());
        Optional<Monitoring> how = row.entry().monitoringFor(guide.audience()).stream().findFirst();
        List<String> lines = new ArrayList<>();
        lines.add(phrases.say("ics.look.until", phrases.day(look.window().last())));
        how.flatMap(Monitoring::everyDays).ifPresent(days ->
                lines.add(phrases.count("ics.look.every", days, days)));
        how.ifPresent(one -> lines.add(one.how().pocketFor(guide.audience()).words()));
        if (look.byStages()) {
            lines.add(phrases.say("weeks.by-stages"));
        }
        String summary = phrases.say("ics.look", Phrases.capital(row.entry().names().common()));
        return entry(guide, calendar, row, "look-" + (number + 1), day, day, summary, lines);
    }

    private CalendarFile.Entry event(Guide guide, GuideCalendar calendar, EntryCalendar row,
            Expected expected, CalendarLine bar, String key) {
        EventDates dates = expected.dates().orElseThrow();
        LocalDate first = bar.first().atYear(edition.year());
        LocalDate last = bar.last().atYear(edition.year());
        List<String> lines = new ArrayList<>();
        lines.add(Phrases.capital(words.dates(dates)) + ".");
        lines.add(words.estimate(calendar.place(), calendar.underPlastic()) + " " + words.years(dates));
        String summary = phrases.say("ics.event", Phrases.capital(row.entry().names().common()),
                expected.event().event());
        return entry(guide, calendar, row, key, first,
                last.isBefore(first) ? last.plusYears(1) : last, summary, lines);
    }

    private CalendarFile.Entry entry(Guide guide, GuideCalendar calendar, EntryCalendar row, String key,
            LocalDate first, LocalDate last, String summary, List<String> lines) {
        lines.add(phrases.say("weeks.field-decides"));
        edition.notice().ifPresent(notice -> lines.add(notice.pocket().words()));
        String place = calendar.place().stations().stream().map(Station::id).collect(Collectors.joining("+"));
        String uid = String.join(".", guide.id(), row.entry().id(), key, place.isEmpty() ? "nowhere" : place,
                String.valueOf(edition.year())) + "@" + host();
        return new CalendarFile.Entry(uid, first, last, summary, String.join("\n", lines),
                List.of(guide.title(), phrases.say("scouting")));
    }

    /** What makes an id of this publisher differ from all others. */
    private String host() {
        try {
            return Optional.ofNullable(URI.create(edition.handbook()).getHost()).orElse("fieldfold");
        } catch (IllegalArgumentException unfit) {
            return "fieldfold";
        }
    }
}
