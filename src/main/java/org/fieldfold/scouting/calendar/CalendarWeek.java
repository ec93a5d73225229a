package org.fieldfold.scouting.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A week of the season and what is expected in it.
 *
 * @param monday its first day
 * @param lookFor in the order of the lines given
 */
public record CalendarWeek(LocalDate monday, List<Expected> lookFor) {
    public CalendarWeek {
        lookFor = List.copyOf(lookFor);
    }

    /** How far a bar has come in a week. */
    public enum Phase {
        /** Before the usual day: only in early years. */
        EARLY,
        /** The week of the usual day. */
        USUAL,
        /** After the usual day: still to come in late years, or going on. */
        LATE,
        /** In a window without a usual day. */
        OPEN
    }

    /** @param id of the line */
    public record Expected(String id, Phase phase) {
    }

    public LocalDate sunday() {
        return monday.plusDays(6);
    }

    /**
     * The weeks of {@code year} in which something is expected, in order; a week belongs to its Thursday's
     * year.
     */
    public static List<CalendarWeek> of(int year, List<CalendarLine> lines) {
        List<CalendarWeek> weeks = new ArrayList<>();
        LocalDate monday = LocalDate.of(year, 1, 4).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        for (; monday.plusDays(3).getYear() == year; monday = monday.plusDays(7)) {
            LocalDate start = monday;
            List<MonthDay> days = IntStream.range(0, 7).mapToObj(day -> MonthDay.from(start.plusDays(day))).toList();
            List<Expected> lookFor = lines.stream().flatMap(line -> phase(line, days, year).stream()
                    .map(phase -> new Expected(line.id(), phase))).toList();
            if (!lookFor.isEmpty()) {
                weeks.add(new CalendarWeek(start, lookFor));
            }
        }
        return List.copyOf(weeks);
    }

    /** @param days of a week of the year */
    private static Optional<Phase> phase(CalendarLine line, List<MonthDay> days, int year) {
        Optional<MonthDay> inside = days.stream().filter(line::holds).findFirst();
        if (inside.isEmpty() || line.usual().isEmpty()) {
            return inside.map(day -> Phase.OPEN);
        }
        // 29 February is looked for on the 28th where there is none
        MonthDay usual = MonthDay.from(line.usual().get().atYear(year));
        if (days.contains(usual)) {
            return Optional.of(Phase.USUAL);
        }
        return Optional.of(comesBefore(inside.get(), usual, line.first()) ? Phase.EARLY : Phase.LATE);
    }

    /** Whether {@code day} comes before {@code usual} in a year that begins on {@code first}. */
    private static boolean comesBefore(MonthDay day, MonthDay usual, MonthDay first) {
        boolean afterNewYear = day.isBefore(first);
        return afterNewYear == usual.isBefore(first) ? day.isBefore(usual) : !afterNewYear;
    }
}
