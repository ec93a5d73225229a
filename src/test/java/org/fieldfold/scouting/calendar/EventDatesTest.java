package org.fieldfold.scouting.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.fieldfold.scouting.degreeday.DayTemperature;
import org.fieldfold.scouting.degreeday.HeatEvent;
import org.fieldfold.scouting.degreeday.HeatModel;
import org.fieldfold.scouting.degreeday.Seattle;
import org.fieldfold.scouting.degreeday.TemperatureRecord;
import org.fieldfold.scouting.degreeday.TemperatureUnit;
import org.junit.jupiter.api.Test;

class EventDatesTest {
    private static final MonthDay NEW_YEAR = MonthDay.of(1, 1);
    private static final HeatEvent TEN_DEGREE_DAYS = new HeatEvent(
            HeatModel.singleSine(TemperatureUnit.CELSIUS, 10), 10, new HeatEvent.OnDay(NEW_YEAR));

    /** Years from 2001 on: 5 °C all day, but 20 °C, ten degree-days, on the given day of May; 0 for never. */
    private static TemperatureRecord warmDays(int... daysOfMay) {
        List<DayTemperature> days = new ArrayList<>();
        for (int i = 0; i < daysOfMay.length; i++) {
            LocalDate warm = daysOfMay[i] == 0 ? LocalDate.MIN : LocalDate.of(2001 + i, 5, daysOfMay[i]);
            LocalDate date = LocalDate.of(2001 + i, 1, 1);
            for (; date.getYear() == 2001 + i; date = date.plusDays(1)) {
                double degrees = date.equals(warm) ? 20 : 5;
                days.add(new DayTemperature(date, degrees, degrees));
            }
        }
        return new TemperatureRecord(TemperatureUnit.CELSIUS, days);
    }

    private static Optional<MonthDay> may(int day) {
        return Optional.of(MonthDay.of(5, day));
    }

    @Test
    void twentyYearsGiveTheSecondTheTenthAndTheNineteenth() {
        int[] days = IntStream.rangeClosed(1, 20).map(day -> 21 - day).toArray();
        EventDates dates = EventDates.of(TEN_DEGREE_DAYS, warmDays(days));
        assertEquals(20, dates.years());
        assertEquals(20, dates.reached());
        assertEquals(may(2), dates.early());
        assertEquals(may(10), dates.median());
        assertEquals(may(19), dates.late());
        assertFalse(dates.fewYears());
    }

    @Test
    void yearsThatNeverReachItCountAsLaterThanAll() {
        EventDates dates = EventDates.of(TEN_DEGREE_DAYS, warmDays(1, 2, 3, 4, 5, 6, 7, 8, 0, 0));
        assertEquals(10, dates.years());
        assertEquals(8, dates.reached());
        assertEquals(2, dates.notReached());
        assertEquals(may(1), dates.early());
        assertEquals(may(5), dates.median());
        assertEquals(Optional.empty(), dates.late());
        assertEquals(may(8), dates.latest());
        EventDates rare = EventDates.of(TEN_DEGREE_DAYS, warmDays(7, 0, 0));
        assertEquals(may(7), rare.early());
        assertEquals(Optional.empty(), rare.median());
        assertEquals(Optional.empty(), CalendarLine.of("rare", rare));
        assertTrue(rare.fewYears());
    }

    @Test
    void aYearWithTooManyMissingDaysIsLeftOutAndCounted() {
        List<DayTemperature> holed = new ArrayList<>();
        TemperatureRecord whole = warmDays(10, 10);
        for (LocalDate day = LocalDate.of(2001, 1, 1); day.getYear() < 2003; day = day.plusDays(1)) {
            boolean missing = day.getYear() == 2001 && day.getMonthValue() == 3 && day.getDayOfMonth() <= 3;
            boolean filled = day.equals(LocalDate.of(2002, 4, 1));
            if (!missing && !filled) {
                holed.add(whole.day(day).orElseThrow());
            }
        }
        EventDates dates = EventDates.of(TEN_DEGREE_DAYS,
                new TemperatureRecord(TemperatureUnit.CELSIUS, holed));
        assertEquals(1, dates.unknown());
        assertEquals(1, dates.years());
        assertEquals(1, dates.filledDays());
        assertEquals(may(10), dates.median());
    }

    // the dates of SeattleTest: codling moth first flight 12 and 3 May, hatch 250 °F-days after a biofix.
    // Here the biofix is the estimated flight itself, so the hatch comes later than with a biofix of 1 May
    // (10 June, 28 May).
    @Test
    void anEventMayFollowAnother() {
        HeatModel moth = HeatModel.singleSine(TemperatureUnit.FAHRENHEIT, 50, 88);
        HeatEvent flight = new HeatEvent(moth, 175, new HeatEvent.OnDay(NEW_YEAR));
        EventDates flights = EventDates.of(flight, Seattle.record());
        assertEquals(List.of(MonthDay.of(5, 3), MonthDay.of(5, 12)), flights.dates());
        EventDates hatch = EventDates.of(new HeatEvent(moth, 250, new HeatEvent.AfterEvent(flight)),
                Seattle.record());
        assertEquals(2, hatch.reached());
        assertTrue(hatch.dates().get(0).isAfter(MonthDay.of(5, 28)), hatch.toString());
        assertTrue(hatch.dates().get(1).isAfter(MonthDay.of(6, 10)), hatch.toString());
        HeatEvent tooHot = new HeatEvent(moth, 9000, new HeatEvent.OnDay(NEW_YEAR));
        EventDates never = EventDates.of(new HeatEvent(moth, 1, new HeatEvent.AfterEvent(tooHot)),
                Seattle.record());
        assertEquals(2, never.notReached());
    }
}
