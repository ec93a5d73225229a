package org.fieldfold.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.calendar.Expected;
import org.fieldfold.calendar.Place;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.DegreeDayEvent;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Season;
import org.fieldfold.scouting.calendar.EventDates;
import org.fieldfold.source.Finding;

/** A degree-day event comes, at one station at least, in half of the years or more. */
final class EventSeldomReached implements PestRule {
    @Override
    public String id() {
        return "event-seldom-reached";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Calendars calendars = new Calendars(base);
        for (int i = 0; i < pest.value().monitoring().size(); i++) {
            List<DegreeDayEvent> events = pest.value().monitoring().get(i).season().map(Season::events)
                    .orElse(List.of());
            for (int j = 0; j < events.size(); j++) {
                List<String> seldom = seldom(pest.value(), events.get(j), calendars);
                if (!seldom.isEmpty() && seldom.size() == calendars.places().size()) {
                    found.accept(Finding.warning(pest.at("monitoring", i, "season", "events", j), id(),
                            "expected an event that comes in half of the years or more, found it in "
                            + String.join(", ", seldom),
                            "look sum, thresholds and unit up again, or leave it out"));
                }
            }
        }
    }

    /** The stations at which it comes in fewer. */
    private static List<String> seldom(PestEntry pest, DegreeDayEvent event, Calendars calendars) {
        List<String> seldom = new ArrayList<>();
        for (Place place : calendars.places()) {
            calendars.events(pest, false, place).stream().filter(one -> one.event().equals(event))
                    .findFirst().flatMap(Expected::dates).filter(EventSeldomReached::isSeldom)
                    .ifPresent(dates -> seldom.add(dates.reached() + " of " + dates.years() + " years near "
                            + place.stations().get(0).name()));
        }
        return seldom;
    }

    private static boolean isSeldom(EventDates dates) {
        return dates.years() > 0 && dates.median().isEmpty();
    }
}
