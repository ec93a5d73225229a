package org.fieldfold.scouting.calendar;

import java.time.LocalDate;
import java.time.MonthDay;
import org.fieldfold.scouting.Expect;
import org.fieldfold.scouting.degreeday.DayTemperature;
import org.fieldfold.scouting.degreeday.TemperatureRecord;
import org.fieldfold.scouting.degreeday.TemperatureUnit;

/**
 * How much warmer it is under plastic than in the open: an assumption that is stated with every date made
 * from it.
 *
 * @param unit of both gains, which are differences: 10 °F warmer is 5.6 °C warmer
 * @param byDay added to the maximum, 0 or more
 * @param byNight added to the minimum, from 0 to {@code byDay}
 * @param from first day of the year under cover
 * @param until last day of the year under cover, not before {@code from}
 */
public record TunnelGain(TemperatureUnit unit, double byDay, double byNight, MonthDay from, MonthDay until) {
    public TunnelGain {
        Expect.within(0, 40, byDay, "warmth gained by day in degrees");
        Expect.within(0, byDay, byNight, "warmth gained by night, which is no more than by day,");
        if (until.isBefore(from)) {
            throw new IllegalArgumentException("a cover must not come off before it goes on: " + from + ", "
                    + until);
        }
    }

    /** Under cover all year. */
    public static TunnelGain allYear(TemperatureUnit unit, double byDay, double byNight) {
        return new TunnelGain(unit, byDay, byNight, MonthDay.of(1, 1), MonthDay.of(12, 31));
    }

    /** The record as it would read under the cover. */
    public TemperatureRecord under(TemperatureRecord open) {
        double day = unit.differenceIn(open.unit(), byDay);
        double night = unit.differenceIn(open.unit(), byNight);
        return open.changed(out -> covered(out.date())
                ? new DayTemperature(out.date(), out.min() + night, out.max() + day) : out);
    }

    private boolean covered(LocalDate date) {
        MonthDay day = MonthDay.from(date);
        return !day.isBefore(from) && !day.isAfter(until);
    }
}
