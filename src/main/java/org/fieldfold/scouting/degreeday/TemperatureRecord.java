package org.fieldfold.scouting.degreeday;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * What a station wrote down, day by day. A day that is not there is missing; it never counts as cold.
 *
 * <p>The rule for missing days: one or two in a row are put on the straight line between the day before and
 * the day after, minimum and maximum each, and are counted as filled; three or more, or any at the end of the
 * record, stay missing, and no sum is given across them.
 */
public final class TemperatureRecord {
    /** The most missing days in a row that are filled. */
    public static final int MOST_FILLED = 2;

    private final TemperatureUnit unit;
    private final NavigableMap<LocalDate, DayTemperature> days = new TreeMap<>();

    /**
     * @param unit of all temperatures
     * @param days in any order
     * @throws IllegalArgumentException when a day is there twice
     */
    public TemperatureRecord(TemperatureUnit unit, Collection<DayTemperature> days) {
        this.unit = unit;
        for (DayTemperature day : days) {
            if (this.days.put(day.date(), day) != null) {
                throw new IllegalArgumentException("a day must be in the record once, found twice: "
                        + day.date());
            }
        }
    }

    public TemperatureUnit unit() {
        return unit;
    }

    /** The first day written down; empty for an empty record. */
    public Optional<LocalDate> first() {
        return days.isEmpty() ? Optional.empty() : Optional.of(days.firstKey());
    }

    /** The last day written down; empty for an empty record. */
    public Optional<LocalDate> last() {
        return days.isEmpty() ? Optional.empty() : Optional.of(days.lastKey());
    }

    /** The years with a day in the record, in order. */
    public List<Integer> years() {
        return days.keySet().stream().map(LocalDate::getYear).distinct().toList();
    }

    /** The day as written down, or filled by the rule above; empty when it stays missing. */
    public Optional<DayTemperature> day(LocalDate date) {
        DayTemperature written = days.get(date);
        if (written != null) {
            return Optional.of(written);
        }
        return gapAround(date).filter(gap -> gap.days() <= MOST_FILLED).map(gap -> {
            DayTemperature before = days.lowerEntry(date).getValue();
            DayTemperature after = days.higherEntry(date).getValue();
            double step = 1.0 / (gap.days() + 1);
            double share = step * (new Gap(gap.first(), date).days());
            return before.towards(after, share, date);
        });
    }

    /** Whether the day was written down and not filled. */
    public boolean isWritten(LocalDate date) {
        return days.containsKey(date);
    }

    /** The missing days around {@code date} between two written ones; empty outside the record. */
    private Optional<Gap> gapAround(LocalDate date) {
        Map.Entry<LocalDate, DayTemperature> before = days.lowerEntry(date);
        Map.Entry<LocalDate, DayTemperature> after = days.higherEntry(date);
        return before == null || after == null ? Optional.empty()
                : Optional.of(new Gap(before.getKey().plusDays(1), after.getKey().minusDays(1)));
    }

    /** All runs of missing days between the first and the last day, short ones too, in order. */
    public List<Gap> gaps() {
        List<Gap> gaps = new ArrayList<>();
        LocalDate expected = days.isEmpty() ? LocalDate.MIN : days.firstKey();
        for (LocalDate date : days.keySet()) {
            if (date.isAfter(expected)) {
                gaps.add(new Gap(expected, date.minusDays(1)));
            }
            expected = date.plusDays(1);
        }
        return List.copyOf(gaps);
    }

    /** The same record in another unit, unrounded. */
    public TemperatureRecord in(TemperatureUnit other) {
        return unit == other ? this : mapped(other, day -> day.converted(unit, other));
    }

    /** The same days with other temperatures, such as those under a cover. */
    public TemperatureRecord changed(UnaryOperator<DayTemperature> change) {
        return mapped(unit, change);
    }

    private TemperatureRecord mapped(TemperatureUnit to, UnaryOperator<DayTemperature> change) {
        return new TemperatureRecord(to, days.values().stream().map(change).toList());
    }
}
