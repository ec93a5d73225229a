package org.fieldfold.content;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.fieldfold.prose.Prose;
import org.fieldfold.scouting.degreeday.DayTemperature;
import org.fieldfold.scouting.degreeday.TemperatureRecord;
import org.fieldfold.scouting.degreeday.TemperatureUnit;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/** Reads what {@link TreeWriter} of the very same program has written. */
final class TreeReader {
    /** What no temperature is in tenths. */
    static final int NO_TENTHS = 1_000_000;

    private static final String OWN = "org.fieldfold.";
    private static final Map<String, Form> FORMS = new ConcurrentHashMap<>();

    private final SourceFile file;
    private final byte[] bytes;
    private final int end;
    private final List<Form> forms = new ArrayList<>();
    private int at;

    /** How a record or constant is made: by its constructor, or from its constants. */
    private record Form(Optional<Constructor<?>> constructor, Object[] constants) {
    }

    /**
     * @param file in which all places lie
     * @param from where in the bytes to begin
     * @param length how many of them there are
     */
    TreeReader(SourceFile file, byte[] bytes, int from, int length) {
        this.file = file;
        this.bytes = bytes;
        this.at = from;
        this.end = from + length;
    }

    boolean isAtEnd() {
        return at == end;
    }

    int position() {
        return at;
    }

    /** Passes over some bytes, which begin at {@link #position}. */
    void skip(int length) {
        if (length < 0 || length > end - at) {
            throw unexpected("the end");
        }
        at += length;
    }

    /** @throws IllegalArgumentException or another unchecked exception for bytes that are no such tree */
    Object value() {
        char letter = (char) next();
        return switch (letter) {
            case 's' -> text();
            case 'p' -> Prose.plain(text());
            case 'a' -> place();
            case 'r' -> record();
            case 'l' -> list();
            case 'o' -> Optional.of(value());
            case 'e' -> Optional.empty();
            case 'c' -> form().constants()[number()];
            case 'i' -> number();
            case 'd' -> Double.longBitsToDouble(eight());
            case 't' -> true;
            case 'f' -> false;
            case 'w' -> LocalDate.ofEpochDay(eight());
            case 'm' -> MonthDay.of(number(), number());
            case 'T' -> temperatures();
            default -> throw unexpected("the letter " + letter);
        };
    }

    Span place() {
        int start = number();
        return new Span(file, start, start + number());
    }

    String text() {
        int length = number();
        int from = at;
        skip(length);
        return new String(bytes, from, length, StandardCharsets.UTF_8);
    }

    /** Small ones take one byte; see {@link TreeWriter#number}. */
    int number() {
        int shifted = 0;
        int shift = 0;
        byte one = next();
        while (one < 0) {
            shifted |= (one & 0x7f) << shift;
            shift += 7;
            one = next();
        }
        shifted |= one << shift;
        return shifted >>> 1 ^ -(shifted & 1);
    }

    private List<?> list() {
        Object[] items = new Object[size()];
        for (int i = 0; i < items.length; i++) {
            items[i] = value();
        }
        return List.of(items);
    }

    /** A size that the bytes can hold. */
    private int size() {
        int size = number();
        if (size < 0 || size > end - at) {
            throw unexpected("the size " + size);
        }
        return size;
    }

    private Object record() {
        Constructor<?> constructor = form().constructor().orElseThrow();
        Object[] values = new Object[constructor.getParameterCount()];
        for (int i = 0; i < values.length; i++) {
            values[i] = value();
        }
        try {
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException refused) {
            throw new IllegalArgumentException(refused);
        }
    }

    private Form form() {
        int number = number();
        if (number == forms.size()) {
            forms.add(FORMS.computeIfAbsent(text(), TreeReader::form));
        }
        return forms.get(number);
    }

    /** Only records and constants of this program are made, whatever the bytes name. */
    private static Form form(String name) {
        try {
            Class<?> type = Class.forName(name, false, TreeReader.class.getClassLoader());
            if (!name.startsWith(OWN) || !type.isRecord() && !type.isEnum()) {
                throw new IllegalArgumentException("expected a record or constant, found " + name);
            }
            if (type.isEnum()) {
                return new Form(Optional.empty(), type.getEnumConstants());
            }
            Constructor<?> constructor = type.getDeclaredConstructor(Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getType).toArray(Class<?>[]::new));
            constructor.setAccessible(true);
            return new Form(Optional.of(constructor), new Object[0]);
        } catch (ReflectiveOperationException | LinkageError unknown) {
            throw new IllegalArgumentException("expected a record or constant, found " + name, unknown);
        }
    }

    private TemperatureRecord temperatures() {
        TemperatureUnit unit = (TemperatureUnit) value();
        DayTemperature[] days = new DayTemperature[size()];
        long date = 0;
        for (int i = 0; i < days.length; i++) {
            date += number();
            days[i] = new DayTemperature(LocalDate.ofEpochDay(date), degrees(), degrees());
        }
        return new TemperatureRecord(unit, Arrays.asList(days));
    }

    private double degrees() {
        int tenths = number();
        return tenths == NO_TENTHS ? Double.longBitsToDouble(eight()) : tenths / 10.0;
    }

    private long eight() {
        long bits = 0;
        for (int i = 0; i < 8; i++) {
            bits = bits << 8 | next() & 0xff;
        }
        return bits;
    }

    private byte next() {
        if (at == end) {
            throw unexpected("the end");
        }
        return bytes[at++];
    }

    private IllegalArgumentException unexpected(String found) {
        return new IllegalArgumentException("expected more of a tree at byte " + at + ", found " + found);
    }
}
