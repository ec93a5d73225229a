package org.fieldfold.translation;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Keys;
import org.fieldfold.entry.Text;
import org.fieldfold.entry.Translated;
import org.fieldfold.prose.Prose;

/**
 * Walks over every text of a record and builds the record anew with what each becomes, whatever records there
 * are: a new key of the model is translated without a change here.
 */
final class TextWalk {
    /** Keys that tell the items of a list apart, the best first. */
    private static final List<String> NAMING = List.of("id", "entry", "stage", "material");

    /** What a text becomes. */
    interface Change {
        Prose prose(Place place, Prose was);

        /** Words of one line. */
        String line(Place place, String was, boolean optional);
    }

    /**
     * Where a text stands.
     *
     * @param path as translators write it, with ids
     * @param spanPath the same with positions, as spans are kept
     */
    record Place(String path, String spanPath) {
        Place then(String key, String spanKey) {
            return new Place(path.isEmpty() ? key : path + "/" + key,
                    spanPath.isEmpty() ? spanKey : spanPath + "/" + spanKey);
        }

        Place then(String key) {
            return then(key, key);
        }
    }

    /** What is to be known of a kind of record; to ask Java for it takes longer than the walk. */
    private record Kind(List<Part> parts, Constructor<?> constructor) {
        private static final ClassValue<Kind> KINDS = new ClassValue<>() {
            @Override
            protected Kind computeValue(Class<?> type) {
                RecordComponent[] components = type.getRecordComponents();
                try {
                    return new Kind(Arrays.stream(components).map(component -> new Part(component,
                            Keys.of(component), Optional.ofNullable(component.getAnnotation(Translated.class))))
                            .toList(),
                            type.getDeclaredConstructor(Arrays.stream(components).map(RecordComponent::getType)
                                    .toArray(Class<?>[]::new)));
                } catch (NoSuchMethodException impossible) {
                    throw new IllegalStateException("a record's own constructor " + type, impossible);
                }
            }
        };

        static Kind of(Class<?> type) {
            return KINDS.get(type);
        }
    }

    /** A component of a record. */
    private record Part(RecordComponent component, String key, Optional<Translated> mark) {
    }

    private final Change change;

    TextWalk(Change change) {
        this.change = change;
    }

    Object walk(Object value, Place place) {
        if (value instanceof Text text) {
            return text(text, place);
        }
        if (value instanceof Prose prose) {
            return change.prose(place, prose);
        }
        if (value instanceof Optional<?> optional) {
            Optional<Object> walked = optional.map(inside -> walk(inside, place));
            return walked.isPresent() && walked.get() == optional.get() ? optional : walked;
        }
        if (value instanceof List<?> list) {
            return list(list, place);
        }
        return value instanceof Record fact ? rebuilt(fact, place) : value;
    }

    private Text text(Text text, Place place) {
        boolean alone = text.handbook().isEmpty() && text.garden().isEmpty();
        Prose pocket = change.prose(alone ? place : place.then("pocket"), text.pocket());
        return alone && pocket == text.pocket() ? text : new Text(pocket,
                text.handbook().map(prose -> change.prose(place.then("handbook"), prose)),
                text.garden().map(prose -> change.prose(place.then("garden"), prose)));
    }

    private List<?> list(List<?> list, Place place) {
        if (list.stream().noneMatch(item -> item instanceof Record || item instanceof List<?>
                || item instanceof Optional<?>)) {
            return list;
        }
        List<String> names = names(list);
        List<Object> walked = new ArrayList<>();
        boolean same = true;
        for (int i = 0; i < list.size(); i++) {
            walked.add(walk(list.get(i), place.then(names.get(i), String.valueOf(i))));
            same &= walked.get(i) == list.get(i);
        }
        return same ? list : List.copyOf(walked);
    }

    /** Items by what names them, where all have it and all differ; otherwise by position. */
    private static List<String> names(List<?> list) {
        for (String key : NAMING) {
            List<String> names = list.stream().flatMap(item -> named(item, key).stream()).toList();
            Set<String> different = new HashSet<>(names);
            if (!list.isEmpty() && different.size() == list.size()) {
                return names;
            }
        }
        return java.util.stream.IntStream.range(0, list.size()).mapToObj(String::valueOf).toList();
    }

    private static Optional<String> named(Object item, String key) {
        return item instanceof Record fact ? Kind.of(fact.getClass()).parts().stream()
                .filter(part -> part.component().getName().equals(key)).findFirst()
                .map(part -> Keys.value(fact, part.component()))
                .map(value -> value.toString().toLowerCase(Locale.ROOT)) : Optional.empty();
    }

    /** The same record where nothing in it has become another. */
    private Record rebuilt(Record fact, Place place) {
        List<Part> parts = Kind.of(fact.getClass()).parts();
        Object[] values = new Object[parts.size()];
        boolean same = true;
        for (int i = 0; i < values.length; i++) {
            Part part = parts.get(i);
            Object value = Keys.value(fact, part.component());
            if (value instanceof Number || value instanceof Enum<?> || value instanceof byte[]
                    || value instanceof String && part.mark().isEmpty()) {
                values[i] = value;
                continue;
            }
            // the note of a figure is its file
            Place inside = fact instanceof Figure ? place : place.then(part.key());
            values[i] = part.mark().isEmpty() ? walk(value, inside)
                    : words(value, inside, part.mark().get().optional());
            same &= values[i] == value;
        }
        return same ? fact : built(fact.getClass(), values);
    }

    /** The components of a record by name, in their order. */
    static Map<String, Object> components(Record fact) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (RecordComponent component : Keys.components(fact)) {
            values.put(component.getName(), Keys.value(fact, component));
        }
        return values;
    }

    static <R> R built(Class<R> type, Object... values) {
        try {
            return type.cast(Kind.of(type).constructor().newInstance(values));
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("a record of the model can be built: " + type, impossible);
        }
    }

    private Object words(Object value, Place place, boolean optional) {
        if (value instanceof List<?> list) {
            String joined = String.join(BaseText.BETWEEN, list.stream().map(String::valueOf).toList());
            String said = change.line(place, joined, optional);
            return said.equals(joined) ? list : said.isEmpty() ? List.of() : List.of(said.split(BaseText.BETWEEN));
        }
        if (value instanceof Optional<?> given) {
            Optional<Object> said = given.map(words -> words(words, place, optional));
            return said.isPresent() && said.get() == given.get() ? given : said;
        }
        return change.line(place, (String) value, optional);
    }
}
