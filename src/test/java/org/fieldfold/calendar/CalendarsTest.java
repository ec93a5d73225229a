package org.fieldfold.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fieldfold.FolderCopy;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.scouting.calendar.CalendarLine;
import org.fieldfold.scouting.calendar.EventDates;
import org.fieldfold.scouting.degreeday.DayTemperature;
import org.fieldfold.scouting.degreeday.Seattle;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalendarsTest {
    private static final Path SAMPLE = Path.of("src/test/resources/org/fieldfold/check/base");

    @TempDir
    private Path folder;

    @BeforeEach
    void layTheSampleBase() throws IOException {
        FolderCopy.of(SAMPLE, folder);
        weather(day -> true);
    }

    private void weather(Predicate<LocalDate> kept) throws IOException {
        Files.writeString(folder.resolve("weather/mill.csv"), Seattle.days().stream()
                .filter(day -> kept.test(day.date())).map(CalendarsTest::row)
                .collect(Collectors.joining("\n", "date,min,max\n", "\n")));
    }

    private static String row(DayTemperature day) {
        return day.date() + "," + day.min() + "," + day.max();
    }

    private void events(String... events) throws IOException {
        Path pest = folder.resolve("pests/potato-beetle.yaml");
        String text = Files.readString(pest);
        int at = text.indexOf("        - {event: first larvae");
        String season = Stream.of(events).map(event -> "        - {" + event + "}\n").collect(Collectors.joining());
        Files.writeString(pest, text.substring(0, at) + season + text.substring(text.indexOf('\n', at) + 1));
    }

    private void inFile(String file, String from, String to) throws IOException {
        String text = Files.readString(folder.resolve(file));
        assertTrue(text.contains(from), from);
        Files.writeString(folder.resolve(file), text.replace(from, to));
    }

    private ContentBase base() throws IOException {
        LoadedBase loaded = BaseLoader.load(folder);
        assertEquals(List.of(), loaded.findings());
        return loaded.base().orElseThrow();
    }

    private static PestEntry beetle(ContentBase base) {
        return base.pests().get("potato-beetle").value();
    }

    private List<Optional<EventDates>> dates() throws IOException {
        ContentBase base = base();
        Calendars calendars = new Calendars(base);
        return calendars.of(beetle(base), List.of("potato"), Audience.FIELD, calendars.region()).events().stream()
                .map(Expected::dates).toList();
    }

    /**
     * Dates of a public record, by public figures: the daily temperatures of Seattle 2012 and 2013 (NOAA);
     * codling moth 50/88 °F, 175, 250 and 1,060 degree-days (Washington State University; Michigan State
     * University); seedcorn maggot 39/84 °F, 360 (South Dakota State University); cabbage maggot 43 °F, 300,
     * and onion maggot 40 °F, 680 (University of Wisconsin XHT1087); single sine. The dates were computed
     * apart from this project.
     */
    @Test
    void datesOfAPublicRecordComeOutAsListed() throws IOException {
        events("event: moths, sum: 175, lower: 50, upper: 88, unit: F, start: 01-01, source: trials",
                "event: hatch, sum: 250, lower: 50, upper: 88, unit: F, start: 05-01, source: trials",
                "event: second moths, sum: 1060, lower: 50, upper: 88, unit: F, start: 05-01, source: trials",
                "event: seedcorn maggot, sum: 360, lower: 39, upper: 84, unit: F, start: 01-01, source: trials",
                "event: cabbage maggot, sum: 300, lower: 43, unit: F, start: 01-01, source: trials",
                "event: onion maggot, sum: 680, lower: 40, unit: F, start: 01-01, source: trials");
        List<List<MonthDay>> expected = List.of(
                List.of(MonthDay.of(5, 3), MonthDay.of(5, 12)),
                List.of(MonthDay.of(5, 28), MonthDay.of(6, 10)),
                List.of(MonthDay.of(7, 19), MonthDay.of(8, 9)),
                List.of(MonthDay.of(3, 15), MonthDay.of(3, 26)),
                List.of(MonthDay.of(4, 2), MonthDay.of(4, 16)),
                List.of(MonthDay.of(4, 24), MonthDay.of(5, 2)));
        assertEquals(expected, dates().stream().map(dates -> dates.orElseThrow().dates()).toList());
    }

    @Test
    void anEventThatWaitsForABiofixHasADateOnlyWhereAnotherStandsInForIt() throws IOException {
        events("key: moths, event: moths, sum: 175, lower: 50, upper: 88, unit: F, start: 01-01, source: trials",
                "event: hatch, sum: 250, lower: 50, upper: 88, unit: F, biofix: first catch, source: trials",
                "event: hatch by moths, sum: 250, lower: 50, upper: 88, unit: F, biofix: first catch,"
                        + " after: moths, source: trials");
        List<Optional<EventDates>> dates = dates();
        assertEquals(Optional.empty(), dates.get(1));
        // 2013: from 3 May instead of 1 May; the two days bring 7.7 degree-days C, by the daily table 30 May
        assertEquals(2, dates.get(2).orElseThrow().reached());
        assertTrue(dates.get(2).orElseThrow().dates().get(0).isAfter(MonthDay.of(5, 28)));
    }

    @Test
    void eventsThatStandInForEachOtherHaveNoDate() throws IOException {
        events("key: one, event: one, sum: 175, lower: 50, unit: F, biofix: seen, after: two, source: trials",
                "key: two, event: two, sum: 175, lower: 50, unit: F, biofix: seen, after: one, source: trials");
        assertEquals(List.of(Optional.empty(), Optional.empty()), dates());
    }

    @Test
    void aGapOfThreeDaysLeavesItsYearOutAndIsCounted() throws IOException {
        events("event: cabbage maggot, sum: 300, lower: 43, unit: F, start: 01-01, source: trials");
        LocalDate gap = LocalDate.of(2012, 2, 10);
        weather(day -> day.isBefore(gap) || day.isAfter(gap.plusDays(1)));
        assertEquals(2, dates().get(0).orElseThrow().filledDays());
        assertEquals(0, dates().get(0).orElseThrow().unknown());
        weather(day -> day.isBefore(gap) || day.isAfter(gap.plusDays(2)));
        EventDates dates = dates().get(0).orElseThrow();
        assertEquals(1, dates.unknown());
        assertEquals(List.of(MonthDay.of(4, 2)), dates.dates());
    }

    @Test
    void underPlasticEverythingComesEarlierAndWithoutAGainNothingIsSaid() throws IOException {
        events("event: onion maggot, sum: 680, lower: 40, unit: F, start: 01-01, source: trials");
        ContentBase open = base();
        Calendars none = new Calendars(open);
        assertEquals(Optional.empty(), none.events(beetle(open), true, none.region()).get(0).dates());
        inFile("edition.yaml", "cautions:", "under-plastic: {unit: F, by-day: 12, by-night: 2,"
                + " from: 03-01, until: 10-31}\ncautions:");
        ContentBase base = base();
        Calendars calendars = new Calendars(base);
        MonthDay outside = calendars.events(beetle(base), false, calendars.region()).get(0).dates()
                .flatMap(EventDates::median).orElseThrow();
        MonthDay inside = calendars.events(beetle(base), true, calendars.region()).get(0).dates()
                .flatMap(EventDates::median).orElseThrow();
        assertTrue(inside.isBefore(outside), inside + ", " + outside);
        // nothing is covered before 1 March, and at most 7 °F-days a day are gained from then on
        assertTrue(inside.isAfter(MonthDay.of(3, 1)), inside.toString());
    }

    /** Codes 20 and 59 of a stage 10-59 that the first field enters on 20 May and the last leaves on 9 July. */
    @Test
    void growthStagesBecomeDaysByTheFirstAndTheLastField() throws IOException {
        inFile("crops.yaml", "{from: 0, to: 9, name: planted}",
                "{from: 0, to: 9, name: planted, usual: {from: 04-20, to: 06-01}}");
        inFile("crops.yaml", "{from: 10, to: 59, name: leaves and buds}",
                "{from: 10, to: 59, name: leaves and buds, usual: {from: 05-20, to: 07-09}}");
        inFile("crops.yaml", "{from: 60, to: 69, name: bloom}",
                "{from: 60, to: 69, name: bloom, usual: {from: 06-29, to: 07-20}}");
        inFile("pests/potato-beetle.yaml", "      stages: {from: 9, to: 59}\n      events:",
                "      stages: {from: 20, to: 59}\n      events:");
        ContentBase base = base();
        Calendars calendars = new Calendars(base);
        List<EntryCalendar.Look> looks = calendars.of(beetle(base), List.of("potato"), Audience.FIELD,
                Place.nowhere()).looks();
        // 10 of the 50 codes from 10 to 60, over the 40 days from 20 May to 29 June: 8 days
        assertEquals(List.of(new EntryCalendar.Look(CalendarLine.window("look", MonthDay.of(5, 28),
                MonthDay.of(7, 9)), true)), looks);
        assertEquals(List.of(), calendars.of(beetle(base), List.of("potato"), Audience.TUNNEL,
                Place.nowhere()).looks());
    }

    @Test
    void weeksNameWhatIsExpectedInThem() throws IOException {
        events("event: onion maggot, sum: 680, lower: 40, unit: F, start: 01-01, source: trials");
        ContentBase base = base();
        Calendars calendars = new Calendars(base);
        GuideCalendar calendar = calendars.of(base.guides().get("potato").value(), calendars.region());
        List<String> weeks = new ArrayList<>();
        calendar.weeks(2027).forEach(week -> week.things().forEach(thing -> weeks.add(week.week().monday() + " "
                + thing.row().entry().id() + " " + thing.event().orElse("") + " " + thing.phase())));
        // of two years the earlier is the median and the 1 in 10; 2 May 2027 is a Sunday
        assertEquals(List.of("2027-04-19 potato-beetle onion maggot USUAL",
                "2027-04-26 potato-beetle onion maggot LATE"), weeks);
    }
}
