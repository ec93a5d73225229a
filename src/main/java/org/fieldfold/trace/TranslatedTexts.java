package org.fieldfold.trace;

import java.util.Optional;

/** Where the translated texts of records stand. */
public interface TranslatedTexts {
    /**
     * The name of a language's file, as the files of a translation are named.
     *
     * @param part component of a base, or {@code edition}
     * @param id of the record; of the edition empty
     * @return empty for records that hold no texts
     */
    Optional<String> file(String part, String id);
}
