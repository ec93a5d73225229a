package org.fieldfold.calendar;

import java.util.Optional;
import org.fieldfold.entry.DegreeDayEvent;
import org.fieldfold.scouting.calendar.CalendarLine;
import org.fieldfold.scouting.calendar.EventDates;

/**
 * A degree-day event and the days on which it came in the years of a place.
 *
 * @param dates empty where no day can be given: it hangs on what is seen in the field, no station is known,
 *     or its figures make no model
 */
public record Expected(DegreeDayEvent event, Optional<EventDates> dates) {
    /** Its bar, named after the event; empty when it came in fewer than half of the years. */
    public Optional<CalendarLine> bar() {
        return dates.flatMap(days -> CalendarLine.of(event.event(), days));
    }

    /** Whether its sum runs from what is seen, and nothing stands in for that. */
    public boolean waitsForBiofix() {
        return event.start().isEmpty() && event.after().isEmpty();
    }
}
