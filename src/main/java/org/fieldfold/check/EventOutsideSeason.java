package org.fieldfold.check;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.function.Consumer;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.calendar.EntryCalendar;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.scouting.calendar.CalendarLine;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/** The events of an entry meet the windows in which it is scouted for, at one station at least. */
final class EventOutsideSeason implements PestRule {
    @Override
    public String id() {
        return "event-outside-season";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Calendars calendars = new Calendars(base);
        List<EntryCalendar> near = calendars.places().stream()
                .map(place -> calendars.of(pest.value(), List.of(), Audience.FIELD, place))
                .filter(row -> !row.looks().isEmpty() && !row.bars().isEmpty()).toList();
        if (!near.isEmpty() && near.stream().noneMatch(EventOutsideSeason::meets)) {
            CalendarLine bar = near.get(0).bars().get(0);
            CalendarLine look = near.get(0).looks().get(0).window();
            found.accept(Finding.info(season(pest), id(), "expected an event within the weeks in which one "
                    + "looks, found '" + bar.id() + "' from " + day(bar.first()) + " to " + day(bar.last())
                    + ", and looking from " + day(look.first()) + " to " + day(look.last()),
                    "look up the window, the crop's usual days, and the event's sum"));
        }
    }

    /** The window of the first way of looking that has an event. */
    private static Span season(Placed<PestEntry> pest) {
        var looks = pest.value().monitoring();
        for (int i = 0; i < looks.size(); i++) {
            if (looks.get(i).season().filter(season -> !season.events().isEmpty()).isPresent()) {
                return pest.at("monitoring", i, "season", looks.get(i).season().get().dates().isPresent()
                        ? "dates" : "stages");
            }
        }
        return pest.at("monitoring");
    }

    private static boolean meets(EntryCalendar row) {
        return row.looks().stream().map(EntryCalendar.Look::window).anyMatch(look -> row.bars().stream()
                .anyMatch(bar -> look.holds(bar.first()) || look.holds(bar.last())
                        || bar.holds(look.first())));
    }

    private static String day(MonthDay day) {
        return day.toString().substring(2);
    }
}
