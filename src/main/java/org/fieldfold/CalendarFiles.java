package org.fieldfold;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.calendar.GuideCalendar;
import org.fieldfold.calendar.Place;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Station;
import org.fieldfold.manuscript.CalendarDownload;

/**
 * The calendars of guides as files, in one language. Offices near one station have the same ones: those asked for
 * last are kept. Several threads may ask.
 */
final class CalendarFiles {
    private static final int MOST_KEPT = 1000;

    private final Calendars calendars;
    private final CalendarDownload writer;
    private final Map<Asked, Optional<byte[]>> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Asked, Optional<byte[]>> leastRecent) {
            return size() > MOST_KEPT;
        }
    };

    private record Asked(Guide guide, List<String> stations) {
    }

    CalendarFiles(Calendars calendars, CalendarDownload writer) {
        this.calendars = calendars;
        this.writer = writer;
    }

    /** The file of a guide near an office; empty when there is nothing in it. */
    Optional<byte[]> of(Guide guide, Office office) {
        Place place = calendars.near(office);
        Asked asked = new Asked(guide, place.stations().stream().map(Station::id).toList());
        synchronized (kept) {
            Optional<byte[]> known = kept.get(asked);
            if (known != null) {
                return known;
            }
        }
        GuideCalendar calendar = calendars.of(guide, place);
        Optional<byte[]> file = calendar.isEmpty() ? Optional.empty()
                : Optional.of(writer.write(guide, calendar).getBytes(StandardCharsets.UTF_8));
        synchronized (kept) {
            kept.put(asked, file);
        }
        return file;
    }
}
