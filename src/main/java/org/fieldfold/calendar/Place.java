package org.fieldfold.calendar;

import java.util.List;
import org.fieldfold.entry.Station;

/**
 * Where a calendar holds: near one station, or all over the region, when the years of several stations are
 * taken together.
 *
 * @param stations sorted by id; none where no temperatures are known, and then no event gets a date
 */
public record Place(List<Station> stations) {
    public Place {
        stations = List.copyOf(stations);
    }

    /** Where no station is: windows of dates and growth stages are all that is known there. */
    public static Place nowhere() {
        return new Place(List.of());
    }

    public boolean isOneStation() {
        return stations.size() == 1;
    }

    /** The first year with a temperature; 0 without stations. */
    public int firstYear() {
        return years().findFirst().orElse(0);
    }

    /** The last year with a temperature; 0 without stations. */
    public int lastYear() {
        return years().reduce((one, later) -> later).orElse(0);
    }

    private java.util.stream.IntStream years() {
        return stations.stream().flatMap(station -> station.temperatures().years().stream())
                .mapToInt(Integer::intValue).sorted();
    }
}
