package org.fieldfold;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.translation.TranslatedBase;

/** A base in each of its languages, translated once. Several threads may use it. */
final class Tongues {
    private final ContentBase base;
    private final Map<String, ContentBase> said = new ConcurrentHashMap<>();

    Tongues(ContentBase base) {
        this.base = base;
    }

    /** As it was written. */
    ContentBase base() {
        return base;
    }

    List<String> languages() {
        return base.edition().value().languages();
    }

    ContentBase in(String language) {
        return said.computeIfAbsent(language, unsaid -> TranslatedBase.in(base, unsaid));
    }
}
