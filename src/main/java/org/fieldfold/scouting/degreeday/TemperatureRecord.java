package org.fieldfold.scouting.degreeday;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What a station wrote down, day by day. A day that is not there is missing; it never counts as cold.
 *
 * <p>The rule for missing days: one or two in a row are put on the straight line between the day before and
 * the day after, minimum and maximum each, and are counted as filled; three or more, or any before the first
 * or behind the last day written, stay missing, and no sum is given across them.
 */
public final class TemperatureRecord {
    /** The most missing days in a row that are filled. */
    public static final int MOST_FILLED = 2;

    /** More than any station has, and little enough to hold in memory. */
    private static final long MOST_DAYS = 366L * 300;

    private final TemperatureUnit unit;
    private final long firstDay;
    /** One place a day from the first to the last one written; null where a day is missing. */
    private final DayTemperature[] days;
    /** Asked for far more often than there are records. */
    private final List<Integer> years;
    private final Map<HeatModel, DailyHeat> heat = new ConcurrentHashMap<>();

    /**
     * @param unit of all temperatures
     * @param days in any order
     * @throws IllegalArgumentException when a day is there twice, or the first and the last lie over 300
     *     years apart
     */
    public TemperatureRecord(TemperatureUnit unit, Collection<DayTemperature> days) {
        this.unit = unit;
        this.firstDay = days.stream().mapToLong(day -> day.date().toEpochDay()).min().orElse(0);
        long lastDay = days.stream().mapToLong(day -> day.date().toEpochDay()).max().orElse(-1);
        if (lastDay - firstDay >= MOST_DAYS) {
            throw new IllegalArgumentException("a record must not span more than 300 years, found "
                    + LocalDate.ofEpochDay(firstDay) + " to " + LocalDate.ofEpochDay(lastDay));
        }
        this.days = new DayTemperature[(int) (lastDay - firstDay + 1)];
        for (DayTemperature day : days) {
            int place = (int) (day.date().toEpochDay() - firstDay);
            if (this.days[place] != null) {
                throw new IllegalArgumentException("a day must be in the record once, found twice: "
                        + day.date());
            }
            this.days[place] = day;
        }
        this.years = written().map(day -> day.date().getYear()).distinct().toList();
    }

    public TemperatureUnit unit() {
        return unit;
    }

    /** The first day written down; empty for an empty record. */
    public Optional<LocalDate> first() {
        return days.length == 0 ? Optional.empty() : Optional.of(days[0].date());
    }

    /** The last day written down; empty for an empty record. */
    public Optional<LocalDate> last() {
        return days.length == 0 ? Optional.empty() : Optional.of(days[days.length - 1].date());
    }

    /** The days written down, in order. */
    public List<DayTemperature> days() {
        return written().toList();
    }

    /** The years with a day in the record, in order. */
    public List<Integer> years() {
        return years;
    }

    /** The day as written down, or filled by the rule above; empty when it stays missing. */
    public Optional<DayTemperature> day(LocalDate date) {
        long place = date.toEpochDay() - firstDay;
        if (place < 0 || place >= days.length) {
            return Optional.empty();
        }
        DayTemperature written = days[(int) place];
        return written != null ? Optional.of(written) : filled((int) place, date);
    }

    private Optional<DayTemperature> filled(int place, LocalDate date) {
        int before = place;
        int after = place;
        while (days[before] == null) {
            before--;
        }
        while (days[after] == null) {
            after++;
        }
        if (after - before - 1 > MOST_FILLED) {
            return Optional.empty();
        }
        double share = (double) (place - before) / (after - before);
        return Optional.of(days[before].towards(days[after], share, date));
    }

    /** Whether the day was written down and not filled. */
    public boolean isWritten(LocalDate date) {
        long place = date.toEpochDay() - firstDay;
        return place >= 0 && place < days.length && days[(int) place] != null;
    }

    /** All runs of missing days between the first and the last day, short ones too, in order. */
    public List<Gap> gaps() {
        List<Gap> gaps = new ArrayList<>();
        int[] places = IntStream.range(0, days.length).filter(i -> days[i] != null).toArray();
        for (int i = 1; i < places.length; i++) {
            if (places[i] > places[i - 1] + 1) {
                gaps.add(new Gap(days[places[i - 1]].date().plusDays(1),
                        days[places[i]].date().minusDays(1)));
            }
        }
        return List.copyOf(gaps);
    }

    /** The same record in another unit, unrounded. */
    public TemperatureRecord in(TemperatureUnit other) {
        return unit == other ? this
                : new TemperatureRecord(other, written().map(day -> day.converted(unit, other)).toList());
    }

    /** The same days with other temperatures of the same unit, such as those under a cover. */
    public TemperatureRecord changed(UnaryOperator<DayTemperature> change) {
        return new TemperatureRecord(unit, written().map(change).toList());
    }

    /** The degree-days of all days by {@code model}, worked out the first time and kept. */
    DailyHeat heat(HeatModel model) {
        return heat.computeIfAbsent(model, wanted -> DailyHeat.of(wanted, this));
    }

    private Stream<DayTemperature> written() {
        return Arrays.stream(days).filter(Objects::nonNull);
    }

    /** The same days with the same temperatures, in the same unit. */
    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof TemperatureRecord record && unit == record.unit
                && firstDay == record.firstDay && Arrays.equals(days, record.days);
    }

    /** Cheap on purpose: records are few, and long. */
    @Override
    public int hashCode() {
        return Objects.hash(unit, firstDay, days.length);
    }
}
