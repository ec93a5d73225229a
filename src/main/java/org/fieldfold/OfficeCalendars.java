package org.fieldfold;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.calendar.GuideCalendar;
import org.fieldfold.calendar.Place;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.manuscript.CalendarDownload;
import org.fieldfold.manuscript.Phrases;

/** The calendars that an office gives away as files: {@code offices/<office>/<guide>.<language>.ics}. */
final class OfficeCalendars {
    private OfficeCalendars() {
    }

    /** By path, in the language of {@code base}; a guide without anything in its calendar has no file. */
    static Map<String, byte[]> in(ContentBase base, Calendars calendars, Phrases phrases) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        CalendarDownload writer = new CalendarDownload(base.edition().value(), phrases);
        for (Placed<Office> placed : base.offices().values()) {
            Office office = placed.value();
            of(office, base, calendars, writer, phrases).forEach((name, bytes) ->
                    files.put("offices/" + office.id() + "/" + name, bytes));
        }
        return files;
    }

    /** Those of one office, by name. */
    static Map<String, byte[]> of(Office office, ContentBase base, Calendars calendars, CalendarDownload writer,
            Phrases phrases) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        Place place = calendars.near(office);
        if (office.languages().contains(phrases.language())) {
            base.guides().values().stream().map(Placed::value).filter(office::handsOut).forEach(whole -> {
                Guide guide = office.keeps(whole);
                GuideCalendar calendar = calendars.of(guide, place);
                if (!calendar.isEmpty()) {
                    files.put(guide.id() + "." + phrases.language() + ".ics",
                            writer.write(guide, calendar).getBytes(StandardCharsets.UTF_8));
                }
            });
        }
        return files;
    }
}
