package org.fieldfold.calendar;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.fieldfold.entry.Crop;
import org.fieldfold.entry.DateWindow;
import org.fieldfold.entry.GrowthStage;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.Season;
import org.fieldfold.entry.StageWindow;
import org.fieldfold.scouting.calendar.CalendarLine;

/**
 * The days on which an entry is scouted for. Dates that it gives decide; where it gives growth stages, these
 * are the crop's usual days of them.
 */
final class LookWindows {
    /** Any year without a 29 February. */
    private static final int YEAR = 2027;

    private LookWindows() {
    }

    static List<EntryCalendar.Look> of(List<Monitoring> looks, List<Crop> crops, boolean underPlastic) {
        List<EntryCalendar.Look> windows = new ArrayList<>();
        for (Monitoring look : looks) {
            Optional<DateWindow> dates = look.season().flatMap(Season::dates);
            if (dates.isPresent()) {
                windows.add(look(dates.get(), false));
            } else {
                look.season().flatMap(Season::stages).ifPresent(stages -> crops.forEach(crop ->
                        usual(crop, stages, underPlastic).ifPresent(days -> windows.add(look(days, true)))));
            }
        }
        return joined(windows.stream().distinct().toList());
    }

    private static EntryCalendar.Look look(DateWindow days, boolean byStages) {
        return new EntryCalendar.Look(CalendarLine.window("look", days.from(), days.to()), byStages);
    }

    /**
     * From the day on which the first field comes to the window's first code to the day on which the last one
     * leaves its last code. The first field enters each stage on the first of its usual days, the last field
     * leaves it on the last of them; between, codes are spread evenly over the days, which is rough and said
     * so where it is shown.
     *
     * @return empty where no stage that the window touches has usual days within one year
     */
    static Optional<DateWindow> usual(Crop crop, StageWindow window, boolean underPlastic) {
        NavigableMap<Integer, LocalDate> first = new TreeMap<>();
        NavigableMap<Integer, LocalDate> last = new TreeMap<>();
        boolean touched = false;
        for (GrowthStage stage : crop.stages()) {
            Optional<DateWindow> days = underPlastic ? stage.underPlastic() : stage.usual();
            if (days.isPresent() && !days.get().from().isAfter(days.get().to())) {
                first.put(stage.from(), days.get().from().atYear(YEAR));
                last.put(stage.to(), days.get().to().atYear(YEAR));
                touched |= new StageWindow(stage.from(), stage.to()).overlaps(window);
            }
        }
        if (!touched) {
            return Optional.empty();
        }
        LocalDate from = at(window.from(), first);
        LocalDate to = at(window.to(), last);
        return from.isAfter(to) ? Optional.empty()
                : Optional.of(new DateWindow(MonthDay.from(from), MonthDay.from(to)));
    }

    /** The day of a code on the line between the codes whose days are known; outside them the nearest. */
    private static LocalDate at(int code, NavigableMap<Integer, LocalDate> known) {
        var below = known.floorEntry(code);
        var above = known.ceilingEntry(code);
        if (below == null || above == null || below.getKey().equals(above.getKey())) {
            return (below == null ? above : below).getValue();
        }
        long days = ChronoUnit.DAYS.between(below.getValue(), above.getValue());
        return below.getValue().plusDays(days * (code - below.getKey()) / (above.getKey() - below.getKey()));
    }

    /** Windows that touch become one; one that runs over New Year stays by itself. */
    private static List<EntryCalendar.Look> joined(List<EntryCalendar.Look> windows) {
        List<EntryCalendar.Look> sorted = windows.stream()
                .sorted(Comparator.comparing(look -> look.window().first())).toList();
        List<EntryCalendar.Look> joined = new ArrayList<>();
        for (EntryCalendar.Look next : sorted) {
            EntryCalendar.Look last = joined.isEmpty() ? next : joined.get(joined.size() - 1);
            if (!joined.isEmpty() && plain(last) && plain(next) && touches(last, next)) {
                MonthDay end = last.window().last().isAfter(next.window().last()) ? last.window().last()
                        : next.window().last();
                joined.set(joined.size() - 1, new EntryCalendar.Look(
                        CalendarLine.window("look", last.window().first(), end),
                        last.byStages() && next.byStages()));
            } else {
                joined.add(next);
            }
        }
        return List.copyOf(joined);
    }

    private static boolean plain(EntryCalendar.Look look) {
        return !look.window().first().isAfter(look.window().last());
    }

    private static boolean touches(EntryCalendar.Look one, EntryCalendar.Look next) {
        LocalDate behind = one.window().last().atYear(YEAR).plusDays(1);
        return !next.window().first().atYear(YEAR).isAfter(behind);
    }
}
