package org.fieldfold.content;

import java.lang.reflect.Constructor;
import java.util.List;
import java.util.Map;

/**
 * What may stand at one place of a content file: the one description from which files are bound and schemas
 * written.
 */
sealed interface Shape {
    /** What is expected there, as a message says it: {@code a date}. */
    String expected();

    /** Single values. */
    enum Plain implements Shape {
        TEXT("a text"), PROSE("a text"), STRING("a text"), INTEGER("a whole number"), NUMBER("a number"),
        TRUTH("true or false"), DATE("a date as in 2026-11-30"), MONTH_DAY("a day as in 05-01");

        private final String expected;

        Plain(String expected) {
            this.expected = expected;
        }

        @Override
        public String expected() {
            return expected;
        }
    }

    /** A word from a fixed vocabulary, by how it is written. */
    record Words(Map<String, Object> byWord) implements Shape {
        @Override
        public String expected() {
            return (byWord.size() == 1 ? "" : "one of ") + String.join(", ", byWord.keySet());
        }
    }

    /** A list. */
    record Listed(Shape item) implements Shape {
        @Override
        public String expected() {
            return "a list";
        }
    }

    /** A map with known keys, which becomes a record. */
    record Fields(String name, List<Field> fields, Constructor<?> constructor) implements Shape {
        @Override
        public String expected() {
            return "a map with the keys " + String.join(", ", keys());
        }

        List<String> keys() {
            return fields.stream().filter(field -> field.presence() != Presence.FROM_FILE_NAME)
                    .map(Field::key).toList();
        }
    }

    /** A control: the value of its key {@code tier} says which of these it is, the first for tier 1. */
    record Tiers(List<Fields> byTier) implements Shape {
        @Override
        public String expected() {
            return "a map with the key tier";
        }
    }

    /** Whether a key must be there. */
    enum Presence { REQUIRED, OPTIONAL, LIST, FROM_FILE_NAME }

    /**
     * One key of a record.
     *
     * @param range what a number must lie between
     */
    record Field(String key, Shape shape, Presence presence, String description, Range range) {
    }

    /** From one number to another, both included. */
    record Range(double from, double to) {
        static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

        boolean holds(double number) {
            return number >= from && number <= to;
        }
    }
}
