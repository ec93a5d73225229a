package org.fieldfold.manuscript;

import java.util.Optional;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.calendar.Place;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Guide;

/** The calendar files beside the handbook's pages: one a guide and station. */
final class CalendarDownloads {
    private CalendarDownloads() {
    }

    /**
     * That of a guide at a station; empty when there is nothing to be expected.
     *
     * @param calendars of the base
     */
    static Optional<Enclosure> file(ContentBase base, Phrases phrases, Calendars calendars, String guide, Place place) {
        Guide of = base.guides().get(guide).value();
        // the calendar is not held until its text is wanted: all of them together are as large as a guide's pages
        return calendars.of(of, place).isEmpty() ? Optional.empty() : Optional.of(new Enclosure(name(place, of),
                Optional.empty(), () -> new CalendarDownload(base.edition().value(), phrases).write(of,
                        calendars.of(of, place))));
    }

    static String name(Place place, Guide guide) {
        return place.stations().get(0).id() + "." + guide.id() + ".ics";
    }
}
