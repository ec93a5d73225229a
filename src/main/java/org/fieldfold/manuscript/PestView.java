package org.fieldfold.manuscript;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.StageDescription;
import org.fieldfold.entry.Text;
import org.fieldfold.source.Spans;

/**
 * What pages that speak of all pests know of each. What such a page is not made of it cannot read, and so it stays
 * as it is when that has changed.
 */
enum PestView {
    /** What calendars tell: names, crops, when and how to look. */
    SEASON {
        @Override
        Placed<PestEntry> of(Placed<PestEntry> placed) {
            PestEntry pest = placed.value();
            return new Placed<>(new PestEntry(pest.id(), pest.names(), pest.crops(), List.of(), List.of(), List.of(),
                    List.of(), Optional.empty(), Optional.empty(), pest.monitoring(), List.of(), List.of(),
                    Optional.empty(), List.of(), List.of(), List.of(), Optional.empty(), Optional.empty(),
                    Optional.empty(), Optional.empty(), Optional.empty()),
                    new Spans(placed.spans().file(), Map.of()));
        }
    },
    /**
     * All but what stands on the pest's own page alone: what its stages look like and where they sit, what it is
     * mistaken for, how its year goes, cautions, sources, and who signed it.
     */
    FACE {
        @Override
        Placed<PestEntry> of(Placed<PestEntry> placed) {
            PestEntry pest = placed.value();
            return new Placed<>(new PestEntry(pest.id(), pest.names(), pest.crops(), pest.figures(),
                    pest.stages().stream().map(stage -> new StageDescription(stage.stage(), stage.size(), UNSAID,
                            stage.bodyWidth(), Optional.empty())).toList(), List.of(), pest.damage(),
                    Optional.empty(), Optional.empty(), pest.monitoring(), pest.thresholds(), pest.controls(),
                    pest.rotation(), pest.spare(), List.of(), List.of(), Optional.empty(), Optional.empty(),
                    Optional.empty(), Optional.empty(), Optional.empty()), placed.spans());
        }
    };

    private static final Text UNSAID = Text.of("");

    abstract Placed<PestEntry> of(Placed<PestEntry> placed);

    /** All pests of a base in this view, in their order. */
    SortedMap<String, Placed<PestEntry>> of(ContentBase base) {
        SortedMap<String, Placed<PestEntry>> seen = new TreeMap<>(base.pests().comparator());
        base.pests().forEach((id, pest) -> seen.put(id, of(pest)));
        return seen;
    }

    /** The base with pests in a view. */
    static ContentBase in(ContentBase base, SortedMap<String, Placed<PestEntry>> seen) {
        return new ContentBase(base.edition(), base.crops(), base.materials(), base.sources(), base.prices(), seen,
                base.enemies(), base.practices(), base.guides(), base.offices(), base.figures(), base.chapters(),
                base.stations(), base.schemes(), base.unread(), base.translations());
    }
}
