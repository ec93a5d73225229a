package org.fieldfold;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.translation.TranslatedBase;

/** A base in each of its languages, translated once. Several threads may use it. */
final class Tongues {
    private final ContentBase base;
    private final Map<String, ContentBase> said = new ConcurrentHashMap<>();
    private final Calendars calendars;

    Tongues(ContentBase base) {
        this.base = base;
        this.calendars = new Calendars(base);
    }

    /** As it was written. */
    ContentBase base() {
        return base;
    }

    /** The calendars of the base as it was written. */
    Calendars calendars() {
        return calendars;
    }

    /** The calendars of the base in a language: a date is worked out once for all of them. */
    Calendars calendars(String language) {
        return calendars.of(in(language));
    }

    List<String> languages() {
        return base.edition().value().languages();
    }

    ContentBase in(String language) {
        return said.computeIfAbsent(language, unsaid -> TranslatedBase.in(base, unsaid));
    }
}
