package org.fieldfold.scouting.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.IsoFields;
import java.util.List;
import java.util.Optional;
import org.fieldfold.scouting.calendar.CalendarWeek.Expected;
import org.fieldfold.scouting.calendar.CalendarWeek.Phase;
import org.junit.jupiter.api.Test;

class CalendarWeekTest {
    private static CalendarLine line(int month, int day, int usualMonth, int usualDay, int lastMonth,
            int lastDay) {
        return new CalendarLine("moth", MonthDay.of(month, day),
                Optional.of(MonthDay.of(usualMonth, usualDay)),
                MonthDay.of(lastMonth, lastDay));
    }

    private static List<Phase> phases(CalendarLine line) {
        return CalendarWeek.of(2027, List.of(line)).stream()
                .flatMap(week -> week.lookFor().stream().map(Expected::phase)).toList();
    }

    @Test
    void weeksRunMondayToSundayAndSayHowFarABarHasCome() {
        CalendarLine stage = CalendarLine.window("stage", MonthDay.of(5, 12), MonthDay.of(5, 12));
        List<CalendarWeek> weeks = CalendarWeek.of(2027, List.of(line(4, 28, 5, 12, 5, 20), stage));
        assertEquals(List.of(LocalDate.of(2027, 4, 26), LocalDate.of(2027, 5, 3), LocalDate.of(2027, 5, 10),
                LocalDate.of(2027, 5, 17)), weeks.stream().map(CalendarWeek::monday).toList());
        assertEquals(LocalDate.of(2027, 5, 2), weeks.get(0).sunday());
        assertEquals(List.of(Phase.EARLY, Phase.EARLY, Phase.USUAL, Phase.LATE),
                phases(line(4, 28, 5, 12, 5, 20)));
        assertEquals(List.of(new Expected("moth", Phase.USUAL), new Expected("stage", Phase.OPEN)),
                weeks.get(2).lookFor());
    }

    @Test
    void aBarMayRunOverNewYear() {
        List<Phase> phases = phases(line(12, 15, 1, 13, 1, 20));
        assertEquals(List.of(Phase.EARLY, Phase.USUAL, Phase.LATE, Phase.EARLY, Phase.EARLY, Phase.EARLY),
                phases);
    }

    @Test
    void aLeapDayIsLookedForInTheWeekOfThe28th() {
        assertEquals(List.of(Phase.USUAL), phases(line(2, 27, 2, 29, 2, 29)));
    }

    // ISO 8601 week numbering, as java.time keeps it
    @Test
    void aYearHasItsIsoWeeks() {
        CalendarLine always = CalendarLine.window("always", MonthDay.of(1, 1), MonthDay.of(12, 31));
        for (int year = 2020; year < 2040; year++) {
            List<CalendarWeek> weeks = CalendarWeek.of(year, List.of(always));
            assertEquals(IsoFields.WEEK_OF_WEEK_BASED_YEAR.rangeRefinedBy(LocalDate.of(year, 7, 1))
                    .getMaximum(),
                    weeks.size());
            assertEquals(1, weeks.get(0).monday().get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
        }
    }

    @Test
    void aBarIsCutToTheTimeInWhichTheCropStands() {
        CalendarLine moth = line(4, 28, 5, 12, 5, 20);
        assertEquals(Optional.of(line(5, 1, 5, 12, 5, 20)),
                moth.within(MonthDay.of(5, 1), MonthDay.of(9, 30)));
        assertEquals(Optional.of(CalendarLine.window("moth", MonthDay.of(5, 15), MonthDay.of(5, 20))),
                moth.within(MonthDay.of(5, 15), MonthDay.of(9, 30)));
        assertEquals(Optional.empty(), moth.within(MonthDay.of(6, 1), MonthDay.of(9, 30)));
        assertThrows(IllegalArgumentException.class, () -> moth.within(MonthDay.of(6, 1), MonthDay.of(5, 1)));
        assertThrows(IllegalArgumentException.class, () -> line(4, 28, 6, 1, 5, 20));
    }
}
