package org.fieldfold.scouting.degreeday;

import java.time.LocalDate;

/**
 * The lowest and the highest temperature of a day, in the unit of the record that holds it.
 *
 * @param min not above {@code max}
 */
public record DayTemperature(LocalDate date, double min, double max) {
    public DayTemperature {
        if (!(min <= max) || Double.isInfinite(min) || Double.isInfinite(max)) {
            throw new IllegalArgumentException("minimum must not be above maximum on " + date + ": found "
                    + min + " and " + max);
        }
    }

    /** This day in another unit. */
    DayTemperature converted(TemperatureUnit from, TemperatureUnit to) {
        return new DayTemperature(date, from.temperatureIn(to, min), from.temperatureIn(to, max));
    }

    /** A day between this and {@code other}, {@code share} (0 to 1) of the way towards {@code other}. */
    DayTemperature towards(DayTemperature other, double share, LocalDate on) {
        return new DayTemperature(on, min + share * (other.min - min), max + share * (other.max - max));
    }
}
