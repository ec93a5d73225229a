package org.fieldfold.scouting.degreeday;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The degree-days of every day of a record by one model, worked out once: a season of events asks for the
 * same days again and again.
 */
final class DailyHeat {
    private final long firstDay;
    /** Not a number where the day stays missing. */
    private final double[] heat;
    private final boolean[] filled;

    private DailyHeat(long firstDay, int days) {
        this.firstDay = firstDay;
        this.heat = new double[days];
        this.filled = new boolean[days];
    }

    /**
     * Temperatures are brought to the model's unit first, unrounded. Where a double method needs the minimum
     * of a next day that is missing, the day's own minimum stands in for it.
     */
    static DailyHeat of(HeatModel model, TemperatureRecord record) {
        long first = record.first().map(LocalDate::toEpochDay).orElse(0L);
        int days = (int) (record.last().map(LocalDate::toEpochDay).orElse(-1L) - first + 1);
        DailyHeat all = new DailyHeat(first, days);
        TemperatureUnit from = record.unit();
        Optional<DayTemperature> next = record.first().flatMap(record::day);
        for (int i = 0; i < days; i++) {
            Optional<DayTemperature> today = next;
            LocalDate date = LocalDate.ofEpochDay(first + i);
            next = record.day(date.plusDays(1));
            all.filled[i] = !record.isWritten(date);
            if (today.isEmpty()) {
                all.heat[i] = Double.NaN;
                continue;
            }
            DayTemperature day = today.get();
            all.heat[i] = model.degreeDays(from.temperatureIn(model.unit(), day.min()),
                    from.temperatureIn(model.unit(), day.max()),
                    from.temperatureIn(model.unit(), next.orElse(day).min()));
        }
        return all;
    }

    /** Degree-days of a day; not a number when it stays missing. */
    double on(long epochDay) {
        long place = epochDay - firstDay;
        return place >= 0 && place < heat.length ? heat[(int) place] : Double.NaN;
    }

    /** Whether the record lacks the day; of use only where {@link #on} gives a number. */
    boolean isFilled(long epochDay) {
        return filled[(int) (epochDay - firstDay)];
    }

    /** The first day on which the sum over both days included stands at {@code target}. */
    HeatDate reaching(double target, LocalDate from, LocalDate to) {
        double total = 0;
        int filledDays = 0;
        for (long day = from.toEpochDay(); day <= to.toEpochDay(); day++) {
            double today = on(day);
            if (Double.isNaN(today)) {
                return new HeatDate.Unknown(LocalDate.ofEpochDay(day), total);
            }
            total += today;
            filledDays += isFilled(day) ? 1 : 0;
            if (total >= target) {
                return new HeatDate.Reached(LocalDate.ofEpochDay(day), total, filledDays);
            }
        }
        return new HeatDate.NotReached(to, total, filledDays);
    }
}
