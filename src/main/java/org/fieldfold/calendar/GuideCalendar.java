package org.fieldfold.calendar;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.scouting.calendar.CalendarLine;
import org.fieldfold.scouting.calendar.CalendarWeek;

/**
 * The year of several entries in one place.
 *
 * @param underPlastic whether everything is meant for a crop under plastic
 * @param rows in the order in which they are read; an entry without anything to say has a row all the same
 */
public record GuideCalendar(Place place, boolean underPlastic, List<EntryCalendar> rows) {
    public GuideCalendar {
        rows = List.copyOf(rows);
    }

    public boolean isEmpty() {
        return rows.stream().allMatch(EntryCalendar::isEmpty);
    }

    /** Whether an event of it has a date, so that stations and years have to be named. */
    public boolean hasEstimates() {
        return rows.stream().anyMatch(row -> !row.bars().isEmpty());
    }

    /**
     * Something that is expected in a week.
     *
     * @param event its name; empty for the entry's window
     */
    public record Thing(EntryCalendar row, Optional<String> event, CalendarWeek.Phase phase) {
    }

    /** A week of {@code year} and all that is expected in it, in the order of the rows. */
    public record Week(CalendarWeek week, List<Thing> things) {
    }

    /** The weeks in which something is expected, as {@link CalendarWeek#of} tells them. */
    public List<Week> weeks(int year) {
        Map<String, Thing> byId = new LinkedHashMap<>();
        List<CalendarLine> lines = new ArrayList<>();
        for (EntryCalendar row : rows) {
            row.looks().forEach(look -> name(look.window(), row, Optional.empty(), byId, lines));
            row.bars().forEach(bar -> name(bar, row, Optional.of(bar.id()), byId, lines));
        }
        return CalendarWeek.of(year, lines).stream().map(week -> new Week(week, week.lookFor().stream()
                .map(one -> {
                    Thing thing = byId.get(one.id());
                    return new Thing(thing.row(), thing.event(), one.phase());
                }).toList())).toList();
    }

    private static void name(CalendarLine line, EntryCalendar row, Optional<String> event,
            Map<String, Thing> byId, List<CalendarLine> lines) {
        String id = String.valueOf(lines.size());
        byId.put(id, new Thing(row, event, CalendarWeek.Phase.OPEN));
        lines.add(new CalendarLine(id, line.first(), line.usual(), line.last()));
    }
}
