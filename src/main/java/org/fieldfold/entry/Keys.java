package org.fieldfold.entry;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Locale;

/**
 * How facts are called in content files, for whatever walks a record by its components: loading and checking,
 * translations, comparing editions, open data.
 */
public final class Keys {
    private Keys() {
    }

    /** {@code lookAlikes} as {@code look-alikes}. */
    public static String of(RecordComponent component) {
        return component.getName().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
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
