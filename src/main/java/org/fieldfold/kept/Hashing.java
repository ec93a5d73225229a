package org.fieldfold.kept;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.temporal.TemporalAccessor;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.concurrent.ConcurrentHashMap;
import org.fieldfold.source.Span;

/**
 * Hashes trees of records by walking all their components, so that nothing that a record holds can be
 * forgotten: a new component joins by itself, and a value without a form is refused. Different trees give
 * different bytes: everything has its kind and its length before it.
 *
 * <p>Of places in files only their order counts and which of them are the same. Whatever is made of a tree
 * may compare its places; what looks at their lines or at the text there must not be kept under these hashes.
 */
final class Hashing {
    private static final ClassValue<Method[]> ACCESSORS = new ClassValue<>() {
        @Override
        protected Method[] computeValue(Class<?> type) {
            Method[] accessors = Arrays.stream(type.getRecordComponents()).map(RecordComponent::getAccessor)
                    .toArray(Method[]::new);
            Arrays.stream(accessors).forEach(accessor -> accessor.setAccessible(true));
            return accessors;
        }
    };

    /** Classes by 64 bits of the hash of their name: names are long, and every record has one. */
    private static final ClassValue<Long> NAMES = new ClassValue<>() {
        @Override
        protected Long computeValue(Class<?> type) {
            return ByteBuffer.wrap(Digest.sha256().digest(type.getName().getBytes(StandardCharsets.UTF_8)))
                    .getLong();
        }
    };

    private final Map<String, String> hashesByName;
    private final Set<Class<?>> remembered;
    private final Map<Same, Digested> memory = new ConcurrentHashMap<>();

    /**
     * @param hashesByName things that are spoken of by name: the hash of each counts wherever its name is a
     *     text
     * @param remembered records that stand in many trees as the same object, and are walked once
     */
    Hashing(Map<String, String> hashesByName, Set<Class<?>> remembered) {
        this.hashesByName = new HashMap<>(hashesByName);
        this.remembered = Set.copyOf(remembered);
    }

    /** The hash of one part of a tree, apart from the numbers that its places have in the whole. */
    private record Digested(byte[] hash, List<Span> places, List<String> named) {
    }

    /** The same object, not only an equal one: to compare takes as long as to hash. */
    private record Same(Object object) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Same same && same.object == object;
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(object);
        }
    }

    Key key(Object... parts) {
        Digest digest = new Digest();
        digest.number(parts.length);
        for (Object part : parts) {
            add(part, digest);
        }
        List<Span> places = List.copyOf(digest.places());
        List<Span> inOrder = places.stream().sorted().toList();
        Map<Span, Integer> rank = new HashMap<>();
        inOrder.forEach(place -> rank.put(place, rank.size()));
        places.forEach(place -> digest.number(rank.get(place)));
        return new Key(digest.hex(), places, digest.named());
    }

    /** What a record amounts to, whatever the order of its places. */
    byte[] hash(Record record) {
        if (remembered.contains(record.getClass())) {
            return memory(record).hash().clone();
        }
        Digest digest = new Digest();
        record(record, digest);
        return digest.hash();
    }

    private void add(Object value, Digest digest) {
        if (value instanceof String text) {
            digest.tag('s');
            digest.text(text);
            String named = hashesByName.get(text);
            if (named != null) {
                digest.tag('n');
                digest.text(named);
                digest.name(text);
            }
        } else if (value instanceof Span span) {
            digest.tag('p');
            digest.place(span);
        } else if (value instanceof Record record) {
            if (remembered.contains(record.getClass())) {
                remembered(record, digest);
            } else {
                record(record, digest);
            }
        } else if (value instanceof List<?> || value instanceof SortedSet<?>) {
            List<?> items = List.copyOf((java.util.Collection<?>) value);
            digest.tag('l');
            digest.number(items.size());
            items.forEach(item -> add(item, digest));
        } else if (value instanceof Optional<?> optional) {
            digest.tag(optional.isPresent() ? 'o' : 'e');
            optional.ifPresent(held -> add(held, digest));
        } else if (value instanceof SortedMap<?, ?> map) {
            digest.tag('m');
            digest.number(map.size());
            map.forEach((key, item) -> {
                add(key, digest);
                add(item, digest);
            });
        } else {
            single(value, digest);
        }
    }

    private static void single(Object value, Digest digest) {
        if (value instanceof Integer || value instanceof Long) {
            digest.tag('i');
            digest.number(((Number) value).longValue());
        } else if (value instanceof Double number) {
            digest.tag('d');
            digest.number(Double.doubleToLongBits(number));
        } else if (value instanceof Boolean truth) {
            digest.tag(truth ? 't' : 'f');
        } else if (value instanceof Enum<?> constant) {
            digest.tag('c');
            digest.text(constant.getDeclaringClass().getName());
            digest.text(constant.name());
        } else if (value instanceof TemporalAccessor time) {
            digest.tag('w');
            digest.text(time.getClass().getName());
            digest.text(time.toString());
        } else if (value instanceof byte[] bytes) {
            digest.tag('b');
            digest.bytes(bytes);
        } else {
            throw new IllegalArgumentException("no form in which a " + value.getClass().getName()
                    + " could be hashed");
        }
    }

    private void record(Record record, Digest digest) {
        digest.tag('r');
        digest.number(NAMES.get(record.getClass()));
        for (Method accessor : ACCESSORS.get(record.getClass())) {
            try {
                add(accessor.invoke(record), digest);
            } catch (ReflectiveOperationException impossible) {
                throw new IllegalStateException("a record's own accessor " + accessor, impossible);
            }
        }
    }

    private Digested memory(Record record) {
        Same same = new Same(record);
        Digested known = memory.get(same);
        if (known == null) {
            known = digested(record);
            memory.put(same, known);
        }
        return known;
    }

    private void remembered(Record record, Digest digest) {
        Digested known = memory(record);
        digest.tag('R');
        digest.bytes(known.hash());
        digest.number(known.places().size());
        known.places().forEach(digest::place);
        known.named().forEach(digest::name);
    }

    private Digested digested(Record record) {
        Digest own = new Digest();
        record(record, own);
        return new Digested(own.hash(), new ArrayList<>(own.places()), new ArrayList<>(own.named()));
    }
}
