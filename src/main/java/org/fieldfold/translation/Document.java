package org.fieldfold.translation;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;

/**
 * A record of the base as translators meet it.
 *
 * @param file it stands in, without its ending: {@code pests/onion-thrips}
 * @param prefix where in the paths of that file it begins: its id in a file of many records, else empty
 */
record Document(String file, String prefix) {
    /** Files of many records, by the component of {@link ContentBase}. */
    private static final Map<String, String> LISTS = Map.of("crops", "crops",
            "materials", "active-ingredients", "sources", "sources", "prices", "prices");
    /** Folders of records, by the component. */
    private static final Map<String, String> FOLDERS = Map.of("pests", "pests", "enemies", "natural-enemies",
            "practices", "practices", "guides", "guides", "offices", "offices", "figures", "figures",
            "chapters", "chapters");

    static final Document EDITION = new Document("edition", "");

    /** Whether a component of the base holds records with texts in them. */
    static boolean holds(String component) {
        return LISTS.containsKey(component) || FOLDERS.containsKey(component);
    }

    static Document of(String component, String id) {
        return LISTS.containsKey(component) ? new Document(LISTS.get(component), id)
                : new Document(FOLDERS.get(component) + "/" + id, "");
    }

    /** All records with texts, in the order of the base. */
    static Map<Document, Placed<?>> of(ContentBase base) {
        Map<Document, Placed<?>> documents = new LinkedHashMap<>();
        documents.put(EDITION, base.edition());
        TextWalk.components(base).forEach((name, value) -> {
            if (holds(name)) {
                ((SortedMap<?, ?>) value).forEach((id, placed) ->
                        documents.put(of(name, (String) id), (Placed<?>) placed));
            }
        });
        return documents;
    }

    /** The records of one file, in the order of the base. */
    static Map<Document, Placed<?>> of(ContentBase base, String file) {
        Map<Document, Placed<?>> documents = new LinkedHashMap<>();
        if (file.equals(EDITION.file())) {
            documents.put(EDITION, base.edition());
        }
        TextWalk.components(base).forEach((name, value) -> {
            if (file.equals(LISTS.get(name))) {
                ((SortedMap<?, ?>) value).forEach((id, placed) ->
                        documents.put(of(name, (String) id), (Placed<?>) placed));
            } else if (FOLDERS.containsKey(name) && file.startsWith(FOLDERS.get(name) + "/")) {
                String id = file.substring(FOLDERS.get(name).length() + 1);
                Optional.ofNullable(((SortedMap<?, ?>) value).get(id)).ifPresent(placed ->
                        documents.put(of(name, id), (Placed<?>) placed));
            }
        });
        return documents;
    }

    /** The files of all records with texts. */
    static SortedSet<String> files(ContentBase base) {
        SortedSet<String> files = new TreeSet<>(Set.of(EDITION.file()));
        TextWalk.components(base).forEach((name, value) -> {
            if (holds(name)) {
                ((SortedMap<?, ?>) value).keySet().forEach(id -> files.add(of(name, (String) id).file()));
            }
        });
        return files;
    }
}
