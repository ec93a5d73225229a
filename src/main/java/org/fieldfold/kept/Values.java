package org.fieldfold.kept;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/**
 * Records as bytes and back: of numbers, texts, constants, lists, what may be absent, further records, and
 * places. Those are written as their number among the places of a key, or, without one, with their files.
 */
final class Values {
    private static final ClassValue<RecordComponent[]> COMPONENTS = new ClassValue<>() {
        @Override
        protected RecordComponent[] computeValue(Class<?> type) {
            RecordComponent[] components = type.getRecordComponents();
            Arrays.stream(components).forEach(component -> component.getAccessor().setAccessible(true));
            return components;
        }
    };

    /** How records of a class are built: Java finds it out anew whenever it is asked, which is dear. */
    private static final ClassValue<Building> BUILDINGS = new ClassValue<>() {
        @Override
        protected Building computeValue(Class<?> type) {
            RecordComponent[] components = COMPONENTS.get(type);
            try {
                Constructor<?> constructor = type.getDeclaredConstructor(Arrays.stream(components)
                        .map(RecordComponent::getType).toArray(Class<?>[]::new));
                constructor.setAccessible(true);
                return new Building(constructor, Arrays.stream(components).map(RecordComponent::getGenericType)
                        .toList());
            } catch (NoSuchMethodException impossible) {
                throw new IllegalStateException("every record has its canonical constructor", impossible);
            }
        }
    };

    private record Building(Constructor<?> constructor, List<Type> types) {
    }

    private final Optional<List<Span>> places;
    /** In the order in which they are met; each is written where it is met first. */
    private final List<SourceFile> files = new ArrayList<>();

    /** Of a result that speaks of places as they are when it is taken. */
    Values(Key key) {
        this.places = Optional.of(key.places());
    }

    /** Of a result that is only taken when no file has changed. */
    Values() {
        this.places = Optional.empty();
    }

    /** @throws IOException for what has no form, a place that is none of the key's among them */
    byte[] write(Record value) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        write(value, new DataOutputStream(bytes));
        return bytes.toByteArray();
    }

    private void write(Object value, DataOutputStream out) throws IOException {
        if (value instanceof Span span) {
            write(span, out);
        } else if (value instanceof Record record) {
            for (RecordComponent component : COMPONENTS.get(record.getClass())) {
                write(component(record, component), out);
            }
        } else if (value instanceof List<?> list) {
            out.writeInt(list.size());
            for (Object item : list) {
                write(item, out);
            }
        } else if (value instanceof Optional<?> optional) {
            out.writeBoolean(optional.isPresent());
            if (optional.isPresent()) {
                write(optional.get(), out);
            }
        } else if (value instanceof String text) {
            write(text.getBytes(StandardCharsets.UTF_8), out);
        } else if (value instanceof byte[] bytes) {
            out.writeInt(bytes.length);
            out.write(bytes);
        } else if (value instanceof Integer number) {
            out.writeInt(number);
        } else if (value instanceof Long number) {
            out.writeLong(number);
        } else if (value instanceof Double number) {
            out.writeDouble(number);
        } else if (value instanceof Boolean truth) {
            out.writeBoolean(truth);
        } else if (value instanceof Enum<?> constant) {
            write(constant.name(), out);
        } else {
            throw new IOException("no form in which a " + value.getClass().getName() + " could be kept");
        }
    }

    private void write(Span span, DataOutputStream out) throws IOException {
        if (places.isPresent()) {
            int place = places.get().indexOf(span);
            if (place < 0) {
                throw new IOException("a place that is not known from the key: " + span.place());
            }
            out.writeInt(place);
            return;
        }
        int file = files.indexOf(span.file());
        out.writeInt(file);
        if (file < 0) {
            files.add(span.file());
            write(span.file().path(), out);
            write(span.file().text(), out);
        }
        out.writeInt(span.start());
        out.writeInt(span.end());
    }

    private Span span(DataInputStream in) throws IOException {
        int at = in.readInt();
        if (places.isPresent()) {
            return places.get().get(at);
        }
        if (at < 0) {
            files.add(new SourceFile((String) read(String.class, in), (String) read(String.class, in)));
        }
        return new Span(files.get(at < 0 ? files.size() - 1 : at), in.readInt(), in.readInt());
    }

    private static Object component(Record record, RecordComponent component) throws IOException {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException unreadable) {
            throw new IOException(unreadable);
        }
    }

    /** @throws IOException for bytes that are no such record */
    <T extends Record> T read(byte[] bytes, Class<T> type) throws IOException {
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
        Object value = read(type, in);
        if (in.available() > 0) {
            throw new IOException("expected the end of a " + type.getName() + ", found more");
        }
        return type.cast(value);
    }

    private Object read(Type type, DataInputStream in) throws IOException {
        if (type instanceof ParameterizedType generic) {
            Type of = generic.getActualTypeArguments()[0];
            if (generic.getRawType() == Optional.class) {
                return in.readBoolean() ? Optional.of(read(of, in)) : Optional.empty();
            }
            List<Object> items = new ArrayList<>();
            for (int left = in.readInt(); left > 0; left--) {
                items.add(read(of, in));
            }
            return items;
        }
        if (type == Span.class) {
            return span(in);
        }
        if (type == String.class) {
            return new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8);
        }
        if (type == byte[].class) {
            return in.readNBytes(in.readInt());
        }
        if (type == int.class || type == Integer.class) {
            return in.readInt();
        }
        if (type == long.class || type == Long.class) {
            return in.readLong();
        }
        if (type == double.class || type == Double.class) {
            return in.readDouble();
        }
        if (type == boolean.class || type == Boolean.class) {
            return in.readBoolean();
        }
        return named((Class<?>) type, in);
    }

    private Object named(Class<?> type, DataInputStream in) throws IOException {
        if (type.isEnum()) {
            String name = (String) read(String.class, in);
            return Arrays.stream(type.getEnumConstants()).filter(one -> ((Enum<?>) one).name().equals(name))
                    .findFirst().orElseThrow(() -> new IOException("no constant " + name + " of " + type));
        }
        Building building = BUILDINGS.get(type);
        Object[] values = new Object[building.types().size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = read(building.types().get(i), in);
        }
        try {
            return building.constructor().newInstance(values);
        } catch (ReflectiveOperationException refused) {
            throw new IOException(refused);
        }
    }
}
