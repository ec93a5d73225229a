package org.fieldfold.calendar;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Crop;
import org.fieldfold.entry.DegreeDayEvent;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Season;
import org.fieldfold.entry.Station;
import org.fieldfold.scouting.calendar.TunnelGain;
import org.fieldfold.scouting.degreeday.TemperatureRecord;

/**
 * The calendars of a base: of any of its guides, in any place. It remembers the dates of events by station,
 * so that offices that share one cost nothing more; several threads may use it.
 */
public final class Calendars {
    private final ContentBase base;
    /** Whose offices make the region; the same base, but nobody notes that they are read. */
    private final ContentBase region;
    private final Warmth warmth;
    private final Optional<TunnelGain> cover;

    public Calendars(ContentBase base) {
        this(base, base, new Warmth());
    }

    private Calendars(ContentBase base, ContentBase region, Warmth warmth) {
        this.base = base;
        this.region = region;
        this.warmth = warmth;
        this.cover = base.edition().value().underPlastic().flatMap(Warmth::gain);
    }

    /**
     * Those of the same base as somebody else reads it, with the dates that are remembered. Its offices are not read
     * again for {@link #named}.
     */
    public Calendars of(ContentBase same) {
        return new Calendars(same, region, warmth);
    }

    /** Those of a later state of the base: dates are remembered as long as the records of all stations stay. */
    public Calendars after(ContentBase later) {
        return days(base).equals(days(later)) ? new Calendars(later, later, warmth) : new Calendars(later);
    }

    /** By identity: to compare days would take long. */
    private static Set<TemperatureRecord> days(ContentBase base) {
        Set<TemperatureRecord> days = Collections.newSetFromMap(new IdentityHashMap<>());
        base.stations().values().forEach(station -> days.add(station.value().temperatures()));
        return days;
    }

    /** Near an office's own station; nowhere when the base lacks it. */
    public Place near(Office office) {
        return new Place(Stream.ofNullable(base.stations().get(office.station())).map(Placed::value)
                .toList());
    }

    /** All over the region: the stations that its offices name. */
    public Place region() {
        return new Place(named().stream().map(base.stations()::get).filter(Objects::nonNull).map(Placed::value)
                .toList());
    }

    /** The ids of the stations that offices name. */
    public SortedSet<String> named() {
        return region.offices().values().stream().map(office -> office.value().station())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Each station that an office names, by itself. */
    public List<Place> places() {
        return region().stations().stream().map(station -> new Place(List.of(station))).toList();
    }

    /** The offices that a station's calendar is for. */
    public List<Office> officesNear(Station station) {
        return base.offices().values().stream().map(Placed::value)
                .filter(office -> office.station().equals(station.id())).toList();
    }

    /** The calendar of a guide: of its entries, on its crops, for its readers. */
    public GuideCalendar of(Guide guide, Place place) {
        return new GuideCalendar(place, guide.audience() == Audience.TUNNEL, guide.entries().stream()
                .map(base.pests()::get).filter(Objects::nonNull)
                .map(pest -> of(pest.value(), guide.crops(), guide.audience(), place)).toList());
    }

    /** The calendar of everything in the open, an entry a row whatever crops it harms. */
    public GuideCalendar ofAll(Place place) {
        return new GuideCalendar(place, false, base.pests().values().stream().map(Placed::value)
                .map(pest -> of(pest, List.of(), Audience.FIELD, place)).toList());
    }

    /**
     * The calendar of one entry.
     *
     * @param crops ids of the crops that matter; empty for all of the entry's
     * @param audience under plastic, for those who grow there
     */
    public EntryCalendar of(PestEntry entry, List<String> crops, Audience audience, Place place) {
        List<Monitoring> looks = entry.monitoringFor(audience);
        List<Crop> grown = entry.crops().stream().filter(crop -> crops.isEmpty() || crops.contains(crop))
                .map(base.crops()::get).filter(Objects::nonNull).map(Placed::value).toList();
        List<EntryCalendar.Look> windows = LookWindows.of(looks, grown, audience == Audience.TUNNEL);
        return new EntryCalendar(entry, windows, expected(looks, audience == Audience.TUNNEL, place));
    }

    /** The events of an entry for all readers; under plastic none has a date unless the edition says how. */
    public List<Expected> events(PestEntry entry, boolean underPlastic, Place place) {
        return expected(entry.monitoring(), underPlastic, place);
    }

    /** Whether dates can be given for what stands under plastic. */
    public boolean knowsPlastic() {
        return cover.isPresent();
    }

    private List<Expected> expected(List<Monitoring> looks, boolean underPlastic, Place place) {
        List<Expected> expected = new ArrayList<>();
        boolean known = !underPlastic || cover.isPresent();
        for (Monitoring look : looks) {
            List<DegreeDayEvent> events = look.season().map(Season::events).orElse(List.of());
            for (DegreeDayEvent event : events) {
                if (expected.stream().noneMatch(other -> other.event().equals(event))) {
                    expected.add(new Expected(event, known ? warmth.dates(event, events, place.stations(),
                            cover.filter(gain -> underPlastic)) : Optional.empty()));
                }
            }
        }
        return List.copyOf(expected);
    }
}
