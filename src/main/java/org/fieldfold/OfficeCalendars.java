package org.fieldfold;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.fieldfold.calendar.Calendars;
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
        base.guides().keySet().forEach(guide -> files.putAll(of(guide, base, calendars, phrases)));
        return files;
    }

    /** Those of one guide. */
    static Map<String, byte[]> of(String guide, ContentBase base, Calendars calendars, Phrases phrases) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        CalendarFiles calendarFiles = new CalendarFiles(calendars,
                new CalendarDownload(base.edition().value(), phrases));
        for (Placed<Office> placed : base.offices().values()) {
            Office office = placed.value();
            of(office, Stream.of(base.guides().get(guide).value()), calendarFiles, phrases.language())
                    .forEach((name, bytes) -> files.put("offices/" + office.id() + "/" + name, bytes));
        }
        return files;
    }

    /** Those of one office, by name. */
    static Map<String, byte[]> of(Office office, ContentBase base, CalendarFiles calendars, String language) {
        return of(office, base.guides().values().stream().map(Placed::value), calendars, language);
    }

    private static Map<String, byte[]> of(Office office, Stream<Guide> guides, CalendarFiles calendars,
            String language) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        if (office.languages().contains(language)) {
            guides.filter(office::handsOut).map(office::keeps)
                    .forEach(guide -> calendars.of(guide, office).ifPresent(file ->
                            files.put(guide.id() + "." + language + ".ics", file)));
        }
        return files;
    }
}
