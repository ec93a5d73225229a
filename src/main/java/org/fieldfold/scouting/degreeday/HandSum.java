package org.fieldfold.scouting.degreeday;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import org.fieldfold.scouting.Expect;

/**
 * Degree-days summed from days that somebody wrote down by hand, from a start to the last day written, both included.
 * Unlike {@link TemperatureRecord} nothing is filled: a day that is not there is counted as missing and not as cold,
 * and the sum is then the least that it can be, as no day takes warmth away.
 *
 * @param total of the days that there are, in the model's unit
 * @param days that were summed
 * @param missing days between the start and the last day that nobody wrote down
 */
public record HandSum(double total, int days, int missing) {
    /** What a sum says about an event. */
    public enum Word {
        /** The sum is there, however warm the missing days were. */
        REACHED,
        NOT_YET,
        /** Days are missing: it may have come on one of them. */
        UNKNOWN
    }

    /**
     * Sums. Where a double method needs the minimum of a next day that is not there, the day's own minimum stands in.
     *
     * @param unit of the temperatures
     * @param written in any order, each day once; those before {@code from} do not count
     */
    public static HandSum of(HeatModel model, TemperatureUnit unit, Collection<DayTemperature> written,
            LocalDate from) {
        TreeMap<LocalDate, DayTemperature> days = new TreeMap<>();
        for (DayTemperature day : written) {
            if (days.put(day.date(), day.converted(unit, model.unit())) != null) {
                throw new IllegalArgumentException("a day must be there once, found twice: " + day.date());
            }
        }
        double total = 0;
        Map<LocalDate, DayTemperature> counted = days.tailMap(from, true);
        for (DayTemperature day : counted.values()) {
            DayTemperature next = days.getOrDefault(day.date().plusDays(1), day);
            total += model.degreeDays(day.min(), day.max(), next.min());
        }
        int missing = counted.isEmpty() ? 0
                : (int) (days.lastKey().toEpochDay() - from.toEpochDay()) + 1 - counted.size();
        return new HandSum(total, counted.size(), missing);
    }

    /** @param sum at which an event comes, above 0 */
    public Word says(double sum) {
        Expect.above(0, sum, "degree-days of an event");
        return total >= sum ? Word.REACHED : missing > 0 || days == 0 ? Word.UNKNOWN : Word.NOT_YET;
    }
}
