package org.fieldfold.trace;

import java.lang.reflect.RecordComponent;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Keys;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Translation;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/**
 * What every record of a base was read from: a file of the same path and bytes gives the same record at the
 * same place, whatever its other lines were read for.
 *
 * @param edition what the edition was read from
 * @param parts by the component of the base, and by language the files of a translation: what each record was
 *     read from, in the order of the base; empty where that is not known, which is never the same as before
 */
record BaseState(Optional<String> edition, Map<String, Map<String, Optional<String>>> parts) {
    /** @param hashes of the files that the base was read from, by path */
    static BaseState of(ContentBase base, Map<String, String> hashes) {
        return new Reading(base, hashes).state();
    }

    /**
     * That of the same base in a language: a record is made of its own file and of the one that translates it.
     *
     * @param said the base in the language, in whose order the records stand
     * @param texts of each record the file in which its translated texts stand
     */
    BaseState in(ContentBase said, String language, TranslatedTexts texts) {
        Map<String, Optional<String>> files = parts.getOrDefault(WatchedBase.files(language), Map.of());
        Map<String, Map<String, Optional<String>>> translated = new HashMap<>(parts);
        for (RecordComponent component : Keys.components(said)) {
            String part = component.getName();
            if (Keys.value(said, component) instanceof SortedMap<?, ?> records) {
                Map<String, Optional<String>> states = parts.getOrDefault(part, Map.of());
                Map<String, Optional<String>> both = new LinkedHashMap<>();
                records.keySet().forEach(id -> both.put((String) id, both(states.getOrDefault(id, Optional.empty()),
                        texts.file(part, (String) id), files)));
                translated.put(part, both);
            }
        }
        return new BaseState(both(edition, texts.file("edition", ""), files), translated);
    }

    /** An own file that is not known, or one of a translation that is there and not known, is never the same. */
    private static Optional<String> both(Optional<String> own, Optional<String> file,
            Map<String, Optional<String>> files) {
        Optional<String> translated = file.isPresent() && files.containsKey(file.get()) ? files.get(file.get())
                : Optional.of("");
        return own.flatMap(one -> translated.map(other -> one + " " + other));
    }

    void write(ResultWriter out) {
        out.perhaps(edition);
        out.number(parts.size());
        parts.forEach((part, states) -> {
            out.text(part);
            out.number(states.size());
            states.forEach((id, state) -> {
                out.text(id);
                out.perhaps(state);
            });
        });
    }

    static BaseState read(ResultReader in) {
        Optional<String> edition = in.perhaps();
        Map<String, Map<String, Optional<String>>> parts = new HashMap<>();
        for (int left = in.count(); left > 0; left--) {
            Map<String, Optional<String>> states = new LinkedHashMap<>();
            parts.put(in.text(), states);
            for (int records = in.count(); records > 0; records--) {
                states.put(in.text(), in.perhaps());
            }
        }
        return new BaseState(edition, parts);
    }

    /** What is no longer as it was. */
    Changes since(BaseState before) {
        if (edition.isEmpty() || !edition.equals(before.edition)) {
            return Changes.EVERYTHING;
        }
        Map<String, Set<String>> changed = new HashMap<>();
        Set<String> names = new HashSet<>();
        Set<String> all = new TreeSet<>(parts.keySet());
        all.addAll(before.parts.keySet());
        for (String part : all) {
            Map<String, Optional<String>> was = before.parts.getOrDefault(part, Map.of());
            Map<String, Optional<String>> is = parts.getOrDefault(part, Map.of());
            Set<String> ids = new TreeSet<>(was.keySet());
            ids.addAll(is.keySet());
            ids.removeIf(id -> was.getOrDefault(id, Optional.empty()).isPresent()
                    && was.get(id).equals(is.get(id)));
            changed.put(part, ids);
            if (!List.copyOf(was.keySet()).equals(List.copyOf(is.keySet()))) {
                names.add(part);
            }
        }
        return new Changes(false, changed, names);
    }

    /** Finds out of each record what it was read from. */
    private record Reading(ContentBase base, Map<String, String> hashes) {
        BaseState state() {
            Map<String, Map<String, Optional<String>>> parts = new HashMap<>();
            for (RecordComponent component : Keys.components(base)) {
                if (Keys.value(base, component) instanceof SortedMap<?, ?> records) {
                    Map<String, Optional<String>> states = new LinkedHashMap<>();
                    records.forEach((id, record) -> states.put((String) id, of((String) id, record)));
                    parts.put(component.getName(), states);
                }
            }
            base.translations().forEach((language, translation) -> {
                Map<String, Optional<String>> states = new LinkedHashMap<>();
                translation.files().forEach((file, page) -> states.put(file, file(page.start().file())));
                parts.put(WatchedBase.files(language), states);
            });
            return new BaseState(file(base.edition().spans().file()), parts);
        }

        private Optional<String> of(String id, Object record) {
            if (record instanceof Placed<?> placed) {
                Optional<String> own = file(placed.spans().file());
                return placed.value() instanceof Figure figure
                        ? own.flatMap(note -> file(figure.file()).map(image -> note + " " + image)) : own;
            }
            if (record instanceof Span unread) {
                return file(unread.file()).map(file -> file + " " + unread.start() + " " + unread.end());
            }
            if (record instanceof Translation translation) {
                return glossary(translation);
            }
            return record instanceof Optional<?> ? scheme(id) : Optional.empty();
        }

        private Optional<String> glossary(Translation translation) {
            Set<Optional<String>> files = translation.glossary().stream().map(term -> file(term.place().file()))
                    .collect(Collectors.toCollection(LinkedHashSet::new));
            return files.contains(Optional.<String>empty()) ? Optional.empty()
                    : Optional.of(files.stream().flatMap(Optional::stream).collect(Collectors.joining(" ")));
        }

        /** A fold scheme carries no place: its file lies below the edition's. */
        private Optional<String> scheme(String id) {
            String edition = base.edition().spans().file().path();
            return file(edition.substring(0, edition.lastIndexOf('/') + 1) + "schemes/" + id + ".fold");
        }

        private Optional<String> file(SourceFile file) {
            return file(file.path());
        }

        private Optional<String> file(String path) {
            return Optional.ofNullable(hashes.get(path)).map(hash -> path + " " + hash);
        }
    }
}
