package org.fieldfold.check;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fieldfold.entry.Chapter;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Keys;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Text;
import org.fieldfold.source.Span;

/** Walks over all words of the base, wherever they stand in a record, with their place in the file. */
final class Facts {
    /** Kinds of record with texts, in the order in which they are gone through. */
    private static final Map<String, Function<ContentBase, SortedMap<String, ? extends Placed<?>>>> KINDS =
            kinds();
    /** Written by a command, and no words. */
    private static final List<String> HASHES = List.of("signed-facts", "signed-with");

    /**
     * One text, or one line of words.
     *
     * @param key the key under which it stands, as in {@code looks}
     * @param length which length of the text it is, as in {@code pocket}; {@code line} for words without
     *     lengths
     * @param words without marks of style
     */
    record Written(String key, String length, String words, Span span) {
        boolean forPocket() {
            return !length.equals("handbook");
        }
    }

    private Facts() {
    }

    static void texts(ContentBase base, Consumer<Written> visitor) {
        records(base).forEach(record -> record.texts(base, visitor));
    }

    /** All records with texts, those of a kind in the order of their ids. */
    static Stream<Of> records(ContentBase base) {
        return Stream.concat(Stream.of(new Of("edition", "")), KINDS.entrySet().stream().flatMap(kind ->
                kind.getValue().apply(base).keySet().stream().map(id -> new Of(kind.getKey(), id))));
    }

    private static Map<String, Function<ContentBase, SortedMap<String, ? extends Placed<?>>>> kinds() {
        Map<String, Function<ContentBase, SortedMap<String, ? extends Placed<?>>>> kinds = new LinkedHashMap<>();
        kinds.put("materials", ContentBase::materials);
        kinds.put("pests", ContentBase::pests);
        kinds.put("enemies", ContentBase::enemies);
        kinds.put("practices", ContentBase::practices);
        kinds.put("guides", ContentBase::guides);
        kinds.put("offices", ContentBase::offices);
        kinds.put("figures", ContentBase::figures);
        kinds.put("chapters", ContentBase::chapters);
        return kinds;
    }

    /**
     * A record, by its kind and id.
     *
     * @param id empty for the edition
     */
    record Of(String kind, String id) {
        String name() {
            return id.isEmpty() ? kind : kind + "/" + id;
        }

        /** Shows its texts, as they stand in a base. */
        void texts(ContentBase base, Consumer<Written> visitor) {
            Placed<?> placed = id.isEmpty() ? base.edition() : KINDS.get(kind).apply(base).get(id);
            if (placed.value() instanceof Chapter chapter) {
                visitor.accept(new Written("chapter", "handbook", chapter.title() + ". "
                        + chapter.body().words(), placed.at()));
            } else {
                walk(placed, placed.value(), new ArrayList<>(), visitor);
            }
        }
    }

    private static void walk(Placed<?> placed, Object value, List<Object> path, Consumer<Written> visitor) {
        if (value instanceof Text text) {
            String key = key(path);
            Span span = placed.at(path.toArray());
            visitor.accept(new Written(key, "pocket", text.pocket().words(),
                    inner(placed, path, "pocket", span)));
            text.handbook().ifPresent(prose -> visitor.accept(
                    new Written(key, "handbook", prose.words(), inner(placed, path, "handbook", span))));
            text.garden().ifPresent(prose -> visitor.accept(
                    new Written(key, "garden", prose.words(), inner(placed, path, "garden", span))));
        } else if (value instanceof String words) {
            visitor.accept(new Written(key(path), "line", words, placed.at(path.toArray())));
        } else if (value instanceof Figure figure) {
            walk(placed, figure.note(), path, visitor);
        } else if (value instanceof Optional<?> optional) {
            optional.ifPresent(inside -> walk(placed, inside, path, visitor));
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                walk(placed, list.get(i), with(path, i), visitor);
            }
        } else if (value instanceof Record fact) {
            for (RecordComponent component : Keys.components(fact)) {
                if (!HASHES.contains(Keys.of(component))) {
                    walk(placed, Keys.value(fact, component), with(path, Keys.of(component)), visitor);
                }
            }
        }
    }

    private static Span inner(Placed<?> placed, List<Object> path, String length, Span outer) {
        Span span = placed.at(with(path, length).toArray());
        return span.equals(outer) ? outer : span;
    }

    /** Of an office's note that of the list: other texts stand under {@code text} too, and have less room. */
    private static String key(List<Object> path) {
        if (path.size() == 3 && path.get(0).equals("notes")) {
            return "notes";
        }
        for (int i = path.size() - 1; i >= 0; i--) {
            if (path.get(i) instanceof String name) {
                return name;
            }
        }
        return "";
    }

    private static List<Object> with(List<Object> path, Object step) {
        List<Object> longer = new ArrayList<>(path);
        longer.add(step);
        return longer;
    }
}
