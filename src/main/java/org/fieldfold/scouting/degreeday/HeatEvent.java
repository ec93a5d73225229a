package org.fieldfold.scouting.degreeday;

import java.time.LocalDate;
import java.time.MonthDay;
import org.fieldfold.scouting.Expect;

/**
 * Something in a pest's year that comes when enough heat has gathered: first flight, first eggs, first
 * larvae.
 *
 * @param degreeDays in the model's unit, above 0
 */
public record HeatEvent(HeatModel model, double degreeDays, Start start) {
    public HeatEvent {
        Expect.above(0, degreeDays, "degree-days of an event");
    }

    /** From when the heat counts. */
    public sealed interface Start {
    }

    /** The same day every year, itself included; 29 February is the 28th in other years. */
    public record OnDay(MonthDay day) implements Start {
    }

    /**
     * A biofix that itself can be expected: the day of the other event, itself included. In the field it is
     * the observed day that counts, and then the sum runs from there ({@link HeatSum}).
     */
    public record AfterEvent(HeatEvent other) implements Start {
    }

    /** When it came in {@code year}, by 31 December. */
    public HeatDate in(int year, TemperatureRecord record) {
        LocalDate end = LocalDate.of(year, 12, 31);
        if (start instanceof OnDay on) {
            return after(on.day().atYear(year), 0, record, end);
        }
        HeatDate before = ((AfterEvent) start).other().in(year, record);
        return before instanceof HeatDate.Reached reached
                ? after(reached.date(), reached.filledDays(), record, end) : before;
    }

    private HeatDate after(LocalDate from, int filledBefore, TemperatureRecord record, LocalDate end) {
        HeatDate date = record.heat(model).reaching(degreeDays, from, end);
        return date instanceof HeatDate.Reached reached
                ? new HeatDate.Reached(reached.date(), reached.total(), filledBefore + reached.filledDays())
                : date;
    }
}
