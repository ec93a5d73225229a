package org.fieldfold.entry;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How facts are called in content files, for whatever walks a record by its components: loading and checking,
 * translations, comparing editions, open data.
 */
public final class Keys {
    /** Java makes them anew whenever it is asked, which is dear: every walk over a base asks for them a record. */
    private static final ClassValue<List<RecordComponent>> COMPONENTS = new ClassValue<>() {
        @Override
        protected List<RecordComponent> computeValue(Class<?> type) {
            return List.of(type.getRecordComponents());
        }
    };

    private Keys() {
    }

    /** The components of a record, in their order. */
    public static List<RecordComponent> components(Record fact) {
        return COMPONENTS.get(fact.getClass());
    }

    /** {@code lookAlikes} as {@code look-alikes}. */
    public static String of(RecordComponent component) {
        String name = component.getName();
        StringBuilder key = new StringBuilder(name.length() + 4);
        for (int i = 0; i < name.length(); i++) {
            char letter = name.charAt(i);
            if (letter >= 'A' && letter <= 'Z') {
                key.append('-').append((char) (letter + ('a' - 'A')));
            } else {
                key.append(letter);
            }
        }
        return key.toString();
    }

    /** What a component holds. */
    public static Object value(Record fact, RecordComponent component) {
        try {
            return component.getAccessor().invoke(fact);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("a record's own accessor " + component, impossible);
        }
    }

    /** A constant as it is written in files; those that are symbols, such as C and F, as they are. */
    public static String word(Enum<?> constant) {
        boolean symbols = Arrays.stream(constant.getDeclaringClass().getEnumConstants())
                .allMatch(other -> ((Enum<?>) other).name().length() == 1);
        return symbols ? constant.name() : constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
