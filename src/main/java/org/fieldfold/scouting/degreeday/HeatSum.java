package org.fieldfold.scouting.degreeday;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.scouting.Expect;

/**
 * Degree-days summed from a start, the start day included: a fixed date, or a biofix such as the first
 * sustained catch. The sum stops at the first day that stays missing ({@link TemperatureRecord} says which
 * do).
 */
public final class HeatSum {
    /**
     * One day of the sum, in the model's unit.
     *
     * @param degreeDays of that day alone
     * @param total from the start to the end of that day
     * @param filled whether the record lacks the day and it was filled
     */
    public record Day(LocalDate date, double degreeDays, double total, boolean filled) {
    }

    private final List<Day> days;
    private final Optional<LocalDate> stoppedAt;
    private final DailyHeat heat;

    private HeatSum(List<Day> days, Optional<LocalDate> stoppedAt, DailyHeat heat) {
        this.days = List.copyOf(days);
        this.stoppedAt = stoppedAt;
        this.heat = heat;
    }

    /**
     * Sums over both days included. The temperatures are brought to the model's unit first. Where a double
     * method needs the minimum of a next day that is missing, the day's own minimum stands in for it.
     *
     * @throws IllegalArgumentException when {@code to} is before {@code from}
     */
    public static HeatSum of(HeatModel model, TemperatureRecord record, LocalDate from, LocalDate to) {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("a sum must not end before it begins: " + from + " to " + to);
        }
        DailyHeat heat = record.heat(model);
        List<Day> days = new ArrayList<>();
        double total = 0;
        for (LocalDate date = from; !date.isAfter(to); date = date.plusDays(1)) {
            double today = heat.on(date.toEpochDay());
            if (Double.isNaN(today)) {
                return new HeatSum(days, Optional.of(date), heat);
            }
            total += today;
            days.add(new Day(date, today, total, heat.isFilled(date.toEpochDay())));
        }
        return new HeatSum(days, Optional.empty(), heat);
    }

    /** The days summed, in order; none when the first one is missing. */
    public List<Day> days() {
        return days;
    }

    /** The first day that stays missing; empty when the sum ran to its end. */
    public Optional<LocalDate> stoppedAt() {
        return stoppedAt;
    }

    /** The sum of the days that there are; the whole sum only if {@link #stoppedAt()} is empty. */
    public double total() {
        return days.isEmpty() ? 0 : days.get(days.size() - 1).total();
    }

    /** How many of the days were filled. */
    public int filledDays() {
        return (int) days.stream().filter(Day::filled).count();
    }

    /**
     * When the sum reached {@code target}.
     *
     * @param target degree-days in the model's unit, above 0
     */
    public HeatDate reaching(double target) {
        Expect.above(0, target, "degree-days to reach");
        LocalDate last = stoppedAt.orElseGet(() -> days.get(days.size() - 1).date());
        return heat.reaching(target, days.isEmpty() ? last : days.get(0).date(), last);
    }
}
