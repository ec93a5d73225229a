package org.fieldfold.scouting.calendar;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.scouting.Expect;
import org.fieldfold.scouting.degreeday.HeatDate;
import org.fieldfold.scouting.degreeday.HeatEvent;
import org.fieldfold.scouting.degreeday.TemperatureRecord;

/**
 * The days on which an event came in the years of a record. It is an estimate for a year to come, and no
 * more.
 *
 * <p>Every date given is one that occurred: the years are put in order, those that never reached the event
 * last, and a year is picked. The median is the middle one (the earlier of two); '1 in 10 early' is the
 * {@code n/10}-th, rounded up, so that in at least one year of ten the event came then or before; '1 in 10
 * late' the same from the other end.
 *
 * @param dates of the years that reached it, in order
 * @param notReached years whose record is whole and whose heat was not enough
 * @param unknown years left out because the record lacks too many days
 * @param filledDays days in all sums that the record lacks and that were filled
 */
public record EventDates(List<MonthDay> dates, int notReached, int unknown, int filledDays) {
    /** Below this many years '1 in 10' is no more than the earliest and the latest. */
    public static final int ENOUGH_YEARS = 10;

    public EventDates {
        dates = dates.stream().sorted().toList();
        Expect.atLeast(0, notReached, "years that did not reach an event");
        Expect.atLeast(0, unknown, "years left out");
        Expect.atLeast(0, filledDays, "filled days");
    }

    /** The dates of {@code event} in all years of {@code record}. */
    public static EventDates of(HeatEvent event, TemperatureRecord record) {
        List<MonthDay> dates = new ArrayList<>();
        int notReached = 0;
        int unknown = 0;
        int filled = 0;
        for (int year : record.years()) {
            HeatDate date = event.in(year, record);
            if (date instanceof HeatDate.Reached reached) {
                dates.add(MonthDay.from(reached.date()));
                filled += reached.filledDays();
            } else if (date instanceof HeatDate.NotReached not) {
                notReached++;
                filled += not.filledDays();
            } else {
                unknown++;
            }
        }
        return new EventDates(dates, notReached, unknown, filled);
    }

    /** The years of several stations, each counted as a year of its own: what is usual all over a region. */
    public static EventDates together(List<EventDates> stations) {
        return new EventDates(stations.stream().flatMap(one -> one.dates().stream()).toList(),
                stations.stream().mapToInt(EventDates::notReached).sum(),
                stations.stream().mapToInt(EventDates::unknown).sum(),
                stations.stream().mapToInt(EventDates::filledDays).sum());
    }

    /** Years that the estimate rests on: those that reached the event and those that did not. */
    public int years() {
        return dates.size() + notReached;
    }

    /** Years in which the event came at all. */
    public int reached() {
        return dates.size();
    }

    /** Whether there are too few years for '1 in 10' to mean more than the earliest and the latest. */
    public boolean fewYears() {
        return years() < ENOUGH_YEARS;
    }

    /** In one year of ten it came on this day or before; empty when it came in fewer. */
    public Optional<MonthDay> early() {
        return ranked(tenth());
    }

    /** In half of the years it came on this day or before; empty when it came in fewer than half. */
    public Optional<MonthDay> median() {
        return ranked((years() + 1) / 2);
    }

    /** In one year of ten it came on this day or later, or never; empty when that is 'never'. */
    public Optional<MonthDay> late() {
        return ranked(years() - tenth() + 1);
    }

    /** The latest day on which it ever came; empty when it never did. */
    public Optional<MonthDay> latest() {
        return ranked(dates.size());
    }

    private int tenth() {
        return (years() + 9) / 10;
    }

    private Optional<MonthDay> ranked(int rank) {
        return rank >= 1 && rank <= dates.size() ? Optional.of(dates.get(rank - 1)) : Optional.empty();
    }
}
