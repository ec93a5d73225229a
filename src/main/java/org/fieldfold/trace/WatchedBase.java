package org.fieldfold.trace;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Translation;

/** A base whose parts note what is read of them. Its edition is not watched: everything leans on it. */
final class WatchedBase {
    /** Names of parts, by the components of a base. */
    static final String TRANSLATIONS = "translations";

    private final Trace trace;

    private WatchedBase(Trace trace) {
        this.trace = trace;
    }

    static ContentBase of(ContentBase base, Trace trace) {
        WatchedBase watched = new WatchedBase(trace);
        return new ContentBase(base.edition(),
                watched.part("crops", base.crops()),
                watched.part("materials", base.materials()),
                watched.part("sources", base.sources()),
                watched.part("prices", base.prices()),
                watched.part("pests", base.pests()),
                watched.part("enemies", base.enemies()),
                watched.part("practices", base.practices()),
                watched.part("guides", base.guides()),
                watched.part("offices", base.offices()),
                watched.part("figures", base.figures()),
                watched.part("chapters", base.chapters()),
                watched.part("stations", base.stations()),
                watched.part("schemes", base.schemes()),
                watched.part("unread", base.unread()),
                watched.translations(base.translations()));
    }

    private <V> SortedMap<String, V> part(String name, SortedMap<String, V> records) {
        return new WatchedMap<>(Collections.unmodifiableSortedMap(records), name, trace);
    }

    /** Of a language its glossary counts as read with it; its files are watched one by one. */
    private SortedMap<String, Translation> translations(SortedMap<String, Translation> translations) {
        SortedMap<String, Translation> watched = new TreeMap<>();
        translations.forEach((language, translation) -> watched.put(language, new Translation(
                translation.language(), translation.glossary(),
                part(files(language), translation.files()))));
        return part(TRANSLATIONS, watched);
    }

    /** The part that a language's files are. */
    static String files(String language) {
        return TRANSLATIONS + "/" + language;
    }
}
