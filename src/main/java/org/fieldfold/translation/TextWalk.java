package org.fieldfold.translation;

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
            return optional.map(inside -> walk(inside, place));
        }
        if (value instanceof List<?> list) {
            return list(list, place);
        }
        return value instanceof Record fact ? rebuilt(fact, place) : value;
    }

    private Text text(Text text, Place place) {
        boolean alone = text.handbook().isEmpty() && text.garden().isEmpty();
        return new Text(change.prose(alone ? place : place.then("pocket"), text.pocket()),
                text.handbook().map(prose -> change.prose(place.then("handbook"), prose)),
                text.garden().map(prose -> change.prose(place.then("garden"), prose)));
    }

    private List<?> list(List<?> list, Place place) {
        List<String> names = names(list);
        List<Object> walked = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            walked.add(walk(list.get(i), place.then(names.get(i), String.valueOf(i))));
        }
        return List.copyOf(walked);
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
        return item instanceof Record fact ? Keys.components(fact).stream()
                .filter(component -> component.getName().equals(key)).findFirst()
                .map(component -> Keys.value(fact, component))
                .map(value -> value.toString().toLowerCase(Locale.ROOT)) : Optional.empty();
    }

    private Record rebuilt(Record fact, Place place) {
        List<RecordComponent> components = Keys.components(fact);
        Object[] values = new Object[components.size()];
        for (int i = 0; i < values.length; i++) {
            Object value = Keys.value(fact, components.get(i));
            Translated mark = components.get(i).getAnnotation(Translated.class);
            // the note of a figure is its file
            Place inside = fact instanceof Figure ? place : place.then(Keys.of(components.get(i)));
            values[i] = mark == null ? walk(value, inside) : words(value, inside, mark.optional());
        }
        return built(fact.getClass(), values);
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
            return type.getDeclaredConstructor(Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getType).toArray(Class<?>[]::new)).newInstance(values);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("a record of the model can be built: " + type, impossible);
        }
    }

    private Object words(Object value, Place place, boolean optional) {
        if (value instanceof List<?> list) {
            String joined = String.join(BaseText.BETWEEN, list.stream().map(String::valueOf).toList());
            String said = change.line(place, joined, optional);
            return said.isEmpty() ? List.of() : List.of(said.split(BaseText.BETWEEN));
        }
        return value instanceof Optional<?> given ? given.map(words -> words(words, place, optional))
                : change.line(place, (String) value, optional);
    }
}
