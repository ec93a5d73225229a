package org.fieldfold.manuscript;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fieldfold.calendar.EntryCalendar;
import org.fieldfold.calendar.Expected;
import org.fieldfold.calendar.GuideCalendar;
import org.fieldfold.calendar.Place;
import org.fieldfold.prose.Run;
import org.fieldfold.scouting.calendar.CalendarLine;
import org.fieldfold.source.Span;

/** Writes a calendar as a strip, with everything that it draws in words beside it. */
final class WeeksWriter {
    /** The season, as it stands in every strip: April to October. */
    private static final int FIRST_MONTH = 4;
    private static final int LAST_MONTH = 10;
    /** All strips of the handbook have the same scale; what lies outside is said in words. */
    private static final int FIRST_ON_SCREEN = 3;
    private static final int LAST_ON_SCREEN = 11;
    private static final MonthDay NEW_YEAR = MonthDay.of(1, 1);
    private static final MonthDay YEARS_END = MonthDay.of(12, 31);

    private static final char NO_BREAK = '\u00a0';

    private final Phrases phrases;
    private final CalendarWords words;
    private final boolean pocket;

    /** @param pocket whether short forms are wanted */
    WeeksWriter(Phrases phrases, boolean pocket) {
        this.phrases = phrases;
        this.words = new CalendarWords(phrases);
        this.pocket = pocket;
    }

    /** The strip under another title. */
    Optional<Block> block(String title, GuideCalendar calendar, Span origin) {
        return block(calendar, origin).map(block -> (Block.Weeks) block).map(weeks -> new Block.Weeks(title,
                weeks.months(), weeks.firstMonth(), weeks.rows(), List.of(), weeks.spare(), origin));
    }

    /** The strip; empty when no entry has anything to draw. */
    Optional<Block> block(GuideCalendar calendar, Span origin) {
        List<EntryCalendar> drawn = calendar.rows().stream().filter(row -> !row.isEmpty()).toList();
        if (drawn.isEmpty()) {
            return Optional.empty();
        }
        List<Block.WeekRow> rows = drawn.stream().map(this::row).toList();
        int first = pocket ? Stream.concat(stretches(rows).map(one -> one.first().getMonthValue()),
                Stream.of(FIRST_MONTH)).min(Integer::compare).orElseThrow() : FIRST_ON_SCREEN;
        int last = pocket ? Stream.concat(stretches(rows).map(one -> one.last().getMonthValue()),
                Stream.of(LAST_MONTH)).max(Integer::compare).orElseThrow() : LAST_ON_SCREEN;
        List<String> months = IntStream.rangeClosed(first, last)
                .mapToObj(month -> initial(phrases.say("month." + month))).toList();
        return Optional.of(new Block.Weeks(title(calendar.place()), months, first, rows,
                note(calendar), pocket, origin));
    }

    private String title(Place place) {
        return place.isOneStation() ? phrases.say("weeks.near", place.stations().get(0).name())
                : phrases.say("weeks");
    }

    private List<Run> note(GuideCalendar calendar) {
        Line line = Line.of();
        boolean looks = calendar.rows().stream().anyMatch(row -> !row.looks().isEmpty());
        if (calendar.hasEstimates()) {
            line.plain(phrases.say(looks ? "weeks.key" : "weeks.key.bars") + " "
                    + (pocket ? pocketEstimate(calendar)
                    : words.estimate(calendar.place(), calendar.underPlastic())));
        } else {
            line.plain(phrases.say("weeks.key.looks"));
        }
        return line.plain(" " + phrases.say("weeks.field-decides")).runs();
    }

    /** The title of an office's strip names the station already. */
    private String pocketEstimate(GuideCalendar calendar) {
        Place place = calendar.place();
        String key = place.isOneStation() ? "weeks.pocket" : "weeks.pocket.region";
        return phrases.say(key, place.firstYear(), place.lastYear(), place.stations().size())
                + (calendar.underPlastic() ? " " + phrases.say("weeks.estimate.plastic") : "");
    }

    private static Stream<Block.Stretch> stretches(List<Block.WeekRow> rows) {
        return rows.stream().flatMap(row -> Stream.concat(row.looks().stream(), row.bars().stream()));
    }

    private static String initial(String month) {
        return Phrases.capital(month.substring(0, month.offsetByCodePoints(0, 1)));
    }

    private Block.WeekRow row(EntryCalendar row) {
        List<CalendarLine> looks = row.looks().stream().map(EntryCalendar.Look::window).toList();
        return new Block.WeekRow(Phrases.capital(row.entry().names().common()), Places.to(row.entry().id()),
                looks.stream().flatMap(WeeksWriter::stretch).toList(),
                row.bars().stream().flatMap(WeeksWriter::stretch).toList(), row.bars().stream()
                .map(bar -> phrases.say("weeks.named", bar.id(),
                        phrases.shortDay(bar.usual().orElse(bar.first())).replace(' ', NO_BREAK)))
                .collect(Collectors.joining(" · ")), said(row), brief(row));
    }

    /** A bar over New Year is drawn at both ends of the strip. */
    private static Stream<Block.Stretch> stretch(CalendarLine line) {
        if (!line.first().isAfter(line.last())) {
            return Stream.of(new Block.Stretch(line.first(), line.usual(), line.last()));
        }
        return Stream.of(new Block.Stretch(NEW_YEAR, line.usual().filter(day -> !day.isAfter(line.last())),
                line.last()), new Block.Stretch(line.first(),
                line.usual().filter(day -> !day.isBefore(line.first())), YEARS_END));
    }

    private String said(EntryCalendar row) {
        List<String> parts = new ArrayList<>();
        for (EntryCalendar.Look look : row.looks()) {
            parts.add(phrases.say("weeks.look", words.span(look.window())));
        }
        for (Expected expected : row.events()) {
            expected.bar().ifPresent(bar -> parts.add(phrases.say("weeks.event",
                    Phrases.capital(expected.event().event()), phrases.day(bar.usual().orElse(bar.first())),
                    words.span(bar))));
        }
        return String.join(" ", parts);
    }

    /** Early April to late October; of events the first. */
    private String brief(EntryCalendar row) {
        List<String> parts = new ArrayList<>();
        row.looks().forEach(look -> parts.add(phrases.say("weeks.brief", words.third(look.window().first()),
                words.third(look.window().last()))));
        row.bars().stream().findFirst().ifPresent(bar -> parts.add(phrases.say("weeks.brief.event", bar.id(),
                words.third(bar.usual().orElse(bar.first())))));
        return String.join("; ", parts);
    }
}
