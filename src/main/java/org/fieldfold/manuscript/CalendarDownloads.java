package org.fieldfold.manuscript;

import java.util.LinkedHashMap;
import java.util.Map;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.calendar.GuideCalendar;
import org.fieldfold.calendar.Place;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Placed;

/** The calendar files beside the handbook's pages: one a guide and station. */
public final class CalendarDownloads {
    private CalendarDownloads() {
    }

    /**
     * By file name; the text of each.
     *
     * @param calendars of the base
     */
    public static Map<String, String> files(ContentBase base, Phrases phrases, Calendars calendars) {
        CalendarDownload writer = new CalendarDownload(base.edition().value(), phrases);
        Map<String, String> files = new LinkedHashMap<>();
        for (Place place : calendars.places()) {
            for (Placed<Guide> guide : base.guides().values()) {
                GuideCalendar calendar = calendars.of(guide.value(), place);
                if (!calendar.isEmpty()) {
                    files.put(name(place, guide.value()), writer.write(guide.value(), calendar));
                }
            }
        }
        return files;
    }

    static String name(Place place, Guide guide) {
        return place.stations().get(0).id() + "." + guide.id() + ".ics";
    }
}
