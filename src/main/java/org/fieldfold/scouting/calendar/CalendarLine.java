package org.fieldfold.scouting.calendar;

import java.time.MonthDay;
import java.util.Optional;

/**
 * One bar of the calendar: when something may be expected in the row.
 *
 * @param id what is expected, as the caller names it
 * @param first day from which to look
 * @param usual the usual day, within the bar; empty for a bar made of a fixed window
 * @param last day until which to look; before {@code first} for a bar that runs over New Year
 */
public record CalendarLine(String id, MonthDay first, Optional<MonthDay> usual, MonthDay last) {
    public CalendarLine {
        if (usual.isPresent() && !holds(usual.get(), first, last)) {
            throw new IllegalArgumentException("the usual day of " + id + " must lie within its bar: "
                    + usual.get() + " is not in " + first + " to " + last);
        }
    }

    /** A window of dates, such as that of a growth stage in this place. */
    public static CalendarLine window(String id, MonthDay first, MonthDay last) {
        return new CalendarLine(id, first, Optional.empty(), last);
    }

    /**
     * The bar of one event, from 1 in 10 early to 1 in 10 late. Where one year in ten or more never reached
     * it, the bar ends with the latest day on which it came.
     *
     * @return empty when fewer than half of the years reached it
     */
    public static Optional<CalendarLine> of(String id, EventDates dates) {
        return between(id, dates, dates);
    }

    /**
     * The bar of what begins with one event and ends with another, such as first to last egg hatch; the usual
     * day is that of the beginning.
     *
     * @return empty when fewer than half of the years reached the first, or no year the second
     */
    public static Optional<CalendarLine> between(String id, EventDates begin, EventDates end) {
        Optional<MonthDay> last = end.late().or(end::latest);
        if (begin.median().isEmpty() || last.isEmpty()) {
            return Optional.empty();
        }
        MonthDay usual = begin.median().get();
        MonthDay close = last.get().isBefore(usual) ? usual : last.get();
        return Optional.of(new CalendarLine(id, begin.early().orElse(usual), Optional.of(usual), close));
    }

    /** Whether {@code day} lies in the bar. */
    public boolean holds(MonthDay day) {
        return holds(day, first, last);
    }

    private static boolean holds(MonthDay day, MonthDay first, MonthDay last) {
        boolean afterFirst = !day.isBefore(first);
        boolean beforeLast = !day.isAfter(last);
        return first.isAfter(last) ? afterFirst || beforeLast : afterFirst && beforeLast;
    }

    /**
     * What is left of this bar within a window that does not run over New Year, such as the time in which the
     * crop stands; the usual day goes if it lies outside.
     *
     * @return empty when nothing is left
     * @throws IllegalArgumentException when this bar or the window runs over New Year
     */
    public Optional<CalendarLine> within(MonthDay from, MonthDay to) {
        if (first.isAfter(last) || from.isAfter(to)) {
            throw new IllegalArgumentException("a bar over New Year cannot be cut: " + first + " to " + last
                    + ", " + from + " to " + to);
        }
        MonthDay begin = first.isBefore(from) ? from : first;
        MonthDay end = last.isAfter(to) ? to : last;
        return begin.isAfter(end) ? Optional.empty()
                : Optional.of(new CalendarLine(id, begin, usual.filter(day -> holds(day, begin, end)), end));
    }
}
