package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Station;
import org.fieldfold.scouting.calendar.EventDates;
import org.fieldfold.scouting.degreeday.Gap;
import org.fieldfold.scouting.degreeday.TemperatureRecord;
import org.fieldfold.source.Finding;

/** The station that an office names has enough whole years for '1 year in 10'. */
final class StationRecordShort implements Rule {
    @Override
    public String id() {
        return "station-record-short";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Map<String, Long> wholeYears = new HashMap<>();
        for (Placed<Office> office : base.offices().values()) {
            Placed<Station> station = base.stations().get(office.value().station());
            if (station != null) {
                TemperatureRecord record = station.value().temperatures();
                long whole = wholeYears.computeIfAbsent(office.value().station(), near ->
                        record.years().stream().filter(year -> isWhole(record, year)).count());
                if (whole < EventDates.ENOUGH_YEARS) {
                    found.accept(Finding.warning(office.at("station"), id(), "expected a station with "
                            + EventDates.ENOUGH_YEARS + " whole years or more, found " + whole
                            + longestGap(record), "add years to its file, or name another station"));
                }
            }
        }
    }

    private static boolean isWhole(TemperatureRecord record, int year) {
        return Stream.iterate(LocalDate.of(year, 1, 1), day -> day.getYear() == year,
                day -> day.plusDays(1)).allMatch(day -> record.day(day).isPresent());
    }

    private static String longestGap(TemperatureRecord record) {
        return record.gaps().stream().filter(gap -> gap.days() > TemperatureRecord.MOST_FILLED)
                .max(Comparator.comparingInt(Gap::days))
                .map(gap -> "; the longest gap runs from " + gap.first() + " to " + gap.last()).orElse("");
    }
}
