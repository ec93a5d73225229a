package org.fieldfold.calendar;

import java.util.ArrayList;
import java.util.List;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.scouting.calendar.CalendarLine;

/**
 * One entry's year.
 *
 * @param looks windows in which it is scouted for, in order, none touching the next
 * @param events in the order of the file
 */
public record EntryCalendar(PestEntry entry, List<Look> looks, List<Expected> events) {
    public EntryCalendar {
        looks = List.copyOf(looks);
        events = List.copyOf(events);
    }

    /**
     * A window in which to look.
     *
     * @param byStages whether it comes from the usual days of the crop's growth stages, and not from dates
     *     that the entry gives
     */
    public record Look(CalendarLine window, boolean byStages) {
    }

    /** The bars of the events that have one, in the order of their usual day. */
    public List<CalendarLine> bars() {
        return events.stream().flatMap(event -> event.bar().stream())
                .sorted(java.util.Comparator.comparing(bar -> bar.usual().orElse(bar.first()))).toList();
    }

    /** Whether there is nothing to draw. */
    public boolean isEmpty() {
        return looks.isEmpty() && bars().isEmpty();
    }

    /** Everything that can be drawn: windows, then bars. */
    public List<CalendarLine> lines() {
        List<CalendarLine> lines = new ArrayList<>(looks.stream().map(Look::window).toList());
        lines.addAll(bars());
        return lines;
    }
}
