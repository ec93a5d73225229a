package org.fieldfold.manuscript;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Spans;

/**
 * Pests of which nothing is known but what calendars tell: their names, their crops, and when and how to look.
 * Calendars are made of these, so that they stay as they are when another text of a pest has changed.
 */
final class Seasons {
    private Seasons() {
    }

    static SortedMap<String, Placed<PestEntry>> of(ContentBase base) {
        SortedMap<String, Placed<PestEntry>> seasons = new TreeMap<>(base.pests().comparator());
        base.pests().forEach((id, pest) -> seasons.put(id, of(pest)));
        return seasons;
    }

    static Placed<PestEntry> of(Placed<PestEntry> placed) {
        PestEntry pest = placed.value();
        return new Placed<>(new PestEntry(pest.id(), pest.names(), pest.crops(), List.of(), List.of(), List.of(), List.of(),
                Optional.empty(), Optional.empty(), pest.monitoring(), List.of(), List.of(), Optional.empty(), List.of(),
                List.of(), List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty()), new Spans(placed.spans().file(), Map.of()));
    }

    /** The base with these pests. */
    static ContentBase in(ContentBase base, SortedMap<String, Placed<PestEntry>> seasons) {
        return new ContentBase(base.edition(), base.crops(), base.materials(), base.sources(), base.prices(), seasons,
                base.enemies(), base.practices(), base.guides(), base.offices(), base.figures(), base.chapters(),
                base.stations(), base.schemes(), base.unread(), base.translations());
    }
}
