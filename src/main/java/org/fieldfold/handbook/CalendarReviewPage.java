package org.fieldfold.handbook;

import java.math.BigDecimal;
import java.time.MonthDay;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.calendar.Expected;
import org.fieldfold.calendar.Place;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.DegreeDayEvent;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Station;
import org.fieldfold.scouting.calendar.EventDates;
import org.fieldfold.scouting.degreeday.Gap;
import org.fieldfold.scouting.degreeday.HeatModel;
import org.fieldfold.scouting.degreeday.TemperatureRecord;

/** For the specialist: what every date of the calendar rests on, station by station. */
public final class CalendarReviewPage {
    private final ContentBase base;
    private final Calendars calendars;
    private final Markup out = new Markup();

    private CalendarReviewPage(ContentBase base, Calendars calendars) {
        this.base = base;
        this.calendars = calendars;
    }

    /** Writes the rows of an entry, or knows from an earlier time what they are. */
    public interface Rows {
        /** @param write writes those of each station, in order, as the entry stands in a base */
        List<String> of(String pest, Function<ContentBase, List<String>> write);
    }

    /**
     * The page as a file, self-contained and without script.
     *
     * @param calendars of the base
     */
    public static byte[] write(ContentBase base, Calendars calendars, boolean proof) {
        return write(base, calendars, (pest, write) -> write.apply(base), proof);
    }

    /** The same; rows that are known are not written again. */
    public static byte[] write(ContentBase base, Calendars calendars, Rows rows, boolean proof) {
        CalendarReviewPage page = new CalendarReviewPage(base, calendars);
        List<List<String>> byEntry = base.pests().keySet().stream().map(pest -> rows.of(pest, read ->
                new CalendarReviewPage(read, calendars.after(read)).rows(pest))).toList();
        Edition edition = base.edition().value();
        ReviewHead.open(page.out, edition, "Dates of the calendar", "Every date is an estimate from the years "
                + "of a station. One or two missing days in a row are filled on a straight line; a year with a "
                + "longer gap before an event is left out and counted.", proof);
        List<Place> places = calendars.places();
        for (int i = 0; i < places.size(); i++) {
            int number = i;
            page.station(places.get(i), byEntry.stream().map(entry -> entry.get(number)).toList());
        }
        page.out.close().close();
        return new Frame("en").inline("Calendar of edition " + edition.year(),
                Sheet.read("handbook.css") + Sheet.read("review.css"), page.out.toString());
    }

    private void station(Place place, List<String> rows) {
        Station station = place.stations().get(0);
        out.open("section", "class", "part", "id", "station-" + station.id());
        out.element("h2", station.name() + ", " + place.firstYear() + " to " + place.lastYear()).line();
        out.element("p", "For " + calendars.officesNear(station).stream().map(office -> office.name())
                .collect(Collectors.joining(", ")) + ". " + gaps(station.temperatures())).line();
        out.open("table").element("caption", "Events near " + station.name()).open("thead").open("tr");
        for (String head : List.of("Entry", "Event", "Model", "Start", "Source", "1 in 10 early", "Median",
                "1 in 10 late", "Median under plastic", "Years reached", "Years left out", "Days filled")) {
            out.element("th", head, "scope", "col");
        }
        out.close().close().open("tbody").line();
        rows.forEach(out::written);
        out.close().close().close().line();
    }

    /** Those of an entry, for each station. */
    private List<String> rows(String id) {
        PestEntry pest = base.pests().get(id).value();
        return calendars.places().stream().map(place -> new CalendarReviewPage(base, calendars).rows(pest, place))
                .toList();
    }

    private String rows(PestEntry pest, Place place) {
        List<Expected> open = calendars.events(pest, false, place);
        List<Expected> covered = calendars.events(pest, true, place);
        for (int i = 0; i < open.size(); i++) {
            row(pest.names().common(), open.get(i), covered.get(i).dates());
        }
        return out.toString();
    }

    private static String gaps(TemperatureRecord record) {
        List<Gap> longer = record.gaps().stream().filter(gap -> gap.days() > TemperatureRecord.MOST_FILLED)
                .toList();
        long filled = record.gaps().stream().filter(gap -> gap.days() <= TemperatureRecord.MOST_FILLED)
                .mapToLong(Gap::days).sum();
        return filled + " days can be filled; " + (longer.isEmpty() ? "no longer gap." : "longer gaps: "
                + longer.stream().map(gap -> gap.first() + " to " + gap.last())
                .collect(Collectors.joining(", ")) + ".");
    }

    private void row(String entry, Expected expected, Optional<EventDates> covered) {
        DegreeDayEvent event = expected.event();
        out.open("tr");
        cell(entry);
        cell(event.event() + ", " + number(event.sum()) + " °" + event.unit() + "-days");
        cell(event.model().map(CalendarReviewPage::model).orElse("none: its figures contradict each other"));
        cell(event.start().map(day -> day.toString().substring(2))
                .or(() -> event.after().map(key -> "the day of '" + key + "', for " + event.biofix().orElse("")))
                .orElse(event.biofix().orElse("–")));
        cell(event.source().map(id -> Optional.ofNullable(base.sources().get(id)).map(Placed::value)
                .map(source -> source.authors() + source.year().map(year -> " " + year).orElse(""))
                .orElse(id)).orElse("–"));
        Optional<EventDates> dates = expected.dates();
        cell(dates.flatMap(EventDates::early));
        cell(dates.flatMap(EventDates::median));
        cell(dates.flatMap(EventDates::late));
        cell(covered.flatMap(EventDates::median));
        cell(dates.map(one -> one.reached() + " of " + one.years()).orElse("no date: waits for what is seen"));
        cell(dates.map(one -> one.unknown() == 0 ? "0" : one.unknown() + ": days missing").orElse("–"));
        cell(dates.map(one -> String.valueOf(one.filledDays())).orElse("–"));
        out.close().line();
    }

    private static String model(HeatModel model) {
        String upper = model.upper().isPresent() ? " to " + number(model.upper().getAsDouble()) : " and above";
        return model.method().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ", "
                + number(model.lower()) + upper + " " + model.unit().symbol() + (model.upper().isPresent()
                ? ", " + model.cutoff().name().toLowerCase(Locale.ROOT) + " cutoff" : "");
    }

    private static String number(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    private void cell(Optional<MonthDay> day) {
        cell(day.map(one -> one.toString().substring(2)).orElse("–"));
    }

    private void cell(String words) {
        out.element("td", words);
    }
}
