package org.fieldfold.content;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.Describe;
import org.fieldfold.entry.Keys;
import org.fieldfold.entry.Text;
import org.fieldfold.prose.Prose;

/** Reads the shape of a content file from the model's records. */
final class Shapes {
    private static final Map<Type, Shape> KNOWN = new ConcurrentHashMap<>();
    private static final Map<Class<?>, Shape> PLAIN = Map.ofEntries(
            Map.entry(Text.class, Shape.Plain.TEXT), Map.entry(Prose.class, Shape.Plain.PROSE),
            Map.entry(String.class, Shape.Plain.STRING), Map.entry(int.class, Shape.Plain.INTEGER),
            Map.entry(Integer.class, Shape.Plain.INTEGER), Map.entry(double.class, Shape.Plain.NUMBER),
            Map.entry(Double.class, Shape.Plain.NUMBER), Map.entry(boolean.class, Shape.Plain.TRUTH),
            Map.entry(Boolean.class, Shape.Plain.TRUTH), Map.entry(LocalDate.class, Shape.Plain.DATE),
            Map.entry(MonthDay.class, Shape.Plain.MONTH_DAY));

    private Shapes() {
    }

    /** The fields of a record; {@code idFromFileName} when its component {@code id} is not a key. */
    static Shape.Fields fields(Class<?> type, boolean idFromFileName) {
        Shape.Fields fields = (Shape.Fields) of(type);
        if (!idFromFileName) {
            return fields;
        }
        List<Shape.Field> without = fields.fields().stream().map(field -> field.key().equals("id")
                ? new Shape.Field("id", field.shape(), Shape.Presence.FROM_FILE_NAME, field.description(),
                        field.range())
                : field).toList();
        return new Shape.Fields(fields.name(), without, fields.constructor());
    }

    /** The fields of the map form of a {@link Text}. */
    static Shape.Fields text() {
        Shape known = KNOWN.get(Prose.class);
        if (known == null) {
            known = record(Text.class);
            KNOWN.put(Prose.class, known);
        }
        return (Shape.Fields) known;
    }

    static Shape of(Type type) {
        Shape known = type instanceof Class<?> plain && PLAIN.containsKey(plain) ? PLAIN.get(plain)
                : KNOWN.get(type);
        if (known == null) {
            known = describe(type);
            KNOWN.put(type, known);
        }
        return known;
    }

    private static Shape describe(Type type) {
        if (type instanceof ParameterizedType list && list.getRawType() == List.class) {
            return new Shape.Listed(of(list.getActualTypeArguments()[0]));
        }
        Class<?> plain = (Class<?>) type;
        if (plain == Control.class) {
            return new Shape.Tiers(Stream.of(Control.Cultural.class, Control.Exclusion.class,
                    Control.Insecticide.class)
                    .map(tier -> (Shape.Fields) of(tier)).toList());
        }
        if (plain.isEnum()) {
            return words(plain);
        }
        if (plain.isRecord()) {
            return record(plain);
        }
        throw new IllegalArgumentException("expected a record, a word, a list or a plain value in the "
                + "model, found " + type);
    }

    private static Shape.Words words(Class<?> type) {
        Map<String, Object> byWord = new LinkedHashMap<>();
        for (Object constant : type.getEnumConstants()) {
            byWord.put(Keys.word((Enum<?>) constant), constant);
        }
        return new Shape.Words(byWord);
    }

    private static Shape.Fields record(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        List<Shape.Field> fields = Arrays.stream(components).map(component -> field(type, component))
                .toList();
        Class<?>[] types = Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            return new Shape.Fields(words(type.getSimpleName()), fields, constructor);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("a record has its canonical constructor: " + type, e);
        }
    }

    private static Shape.Field field(Class<?> type, RecordComponent component) {
        Type generic = component.getGenericType();
        Shape.Presence presence = Shape.Presence.REQUIRED;
        if (component.getType() == Optional.class) {
            generic = ((ParameterizedType) generic).getActualTypeArguments()[0];
            presence = Shape.Presence.OPTIONAL;
        } else if (component.getType() == List.class) {
            presence = Shape.Presence.LIST;
        }
        Describe describe = component.getAnnotation(Describe.class);
        return new Shape.Field(Keys.of(component), of(generic), presence,
                describe == null ? "" : describe.value(), Ranges.of(type, component.getName()));
    }

    /** {@code PestEntry} as {@code pest entry}. */
    private static String words(String camel) {
        StringBuilder words = new StringBuilder();
        for (char c : camel.toCharArray()) {
            if (Character.isUpperCase(c) && words.length() > 0) {
                words.append(' ');
            }
            words.append(Character.toLowerCase(c));
        }
        return words.toString();
    }
}
