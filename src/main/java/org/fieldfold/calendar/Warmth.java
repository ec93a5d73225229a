package org.fieldfold.calendar;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.fieldfold.entry.DegreeDayEvent;
import org.fieldfold.entry.Station;
import org.fieldfold.entry.UnderPlastic;
import org.fieldfold.scouting.calendar.EventDates;
import org.fieldfold.scouting.calendar.TunnelGain;
import org.fieldfold.scouting.degreeday.HeatEvent;
import org.fieldfold.scouting.degreeday.TemperatureRecord;
import org.fieldfold.scouting.degreeday.TemperatureUnit;

/**
 * The dates of degree-day events at the stations of a base. Each is worked out once, however many guides and
 * offices ask for it.
 */
final class Warmth {
    /**
     * The days of a station, told apart by being the same object: to compare them would take long.
     *
     * @param cover empty in the open
     */
    private record Under(TemperatureRecord days, Optional<TunnelGain> cover) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Under under && under.days == days && under.cover.equals(cover);
        }

        @Override
        public int hashCode() {
            return 31 * System.identityHashCode(days) + cover.hashCode();
        }
    }

    private record Asked(Under under, HeatEvent event) {
    }

    private final Map<Under, TemperatureRecord> covered = new ConcurrentHashMap<>();
    private final Map<Asked, EventDates> dates = new ConcurrentHashMap<>();

    /**
     * When an event came at all stations taken together.
     *
     * @param siblings the events of its season, one of which may stand in for its biofix
     */
    Optional<EventDates> dates(DegreeDayEvent event, List<DegreeDayEvent> siblings, List<Station> stations,
            Optional<TunnelGain> cover) {
        Optional<HeatEvent> heat = heat(event, siblings, siblings.size());
        return heat.isEmpty() || stations.isEmpty() ? Optional.empty() : Optional.of(EventDates.together(
                stations.stream().map(station -> dates(heat.get(), station, cover)).toList()));
    }

    private EventDates dates(HeatEvent event, Station station, Optional<TunnelGain> cover) {
        Under under = new Under(station.temperatures(), cover);
        // not inside one another: a map must not be asked while it computes
        TemperatureRecord record = covered.computeIfAbsent(under,
                unseen -> cover.map(gain -> gain.under(station.temperatures())).orElse(station.temperatures()));
        return dates.computeIfAbsent(new Asked(under, event), unseen -> EventDates.of(event, record));
    }

    /** @param most how many events may still stand in for each other, so that no circle is followed */
    private static Optional<HeatEvent> heat(DegreeDayEvent event, List<DegreeDayEvent> siblings, int most) {
        if (most < 0 || !(event.sum() > 0) || event.model().isEmpty()) {
            return Optional.empty();
        }
        Optional<HeatEvent.Start> start = event.start().<HeatEvent.Start>map(HeatEvent.OnDay::new)
                .or(() -> event.after().flatMap(name -> siblings.stream()
                        .filter(other -> other.key().equals(Optional.of(name))).findFirst())
                        .flatMap(other -> heat(other, siblings, most - 1)).map(HeatEvent.AfterEvent::new));
        return start.map(from -> new HeatEvent(event.model().orElseThrow(), event.sum(), from));
    }

    /** The gain as scouting computes with it; empty when its figures make none. */
    static Optional<TunnelGain> gain(UnderPlastic plastic) {
        try {
            return Optional.of(new TunnelGain(plastic.unit() == DegreeDayEvent.TemperatureUnit.F
                    ? TemperatureUnit.FAHRENHEIT : TemperatureUnit.CELSIUS, plastic.byDay(),
                    plastic.byNight(), plastic.from(), plastic.until()));
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }
}
