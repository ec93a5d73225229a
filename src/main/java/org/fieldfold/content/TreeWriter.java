package org.fieldfold.content;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.prose.Prose;
import org.fieldfold.scouting.degreeday.DayTemperature;
import org.fieldfold.scouting.degreeday.TemperatureRecord;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/**
 * Trees of records as bytes, for {@link TreeReader} of the very same program: each value behind a letter for
 * its kind, records by the name of their class and their components in order, places by their offsets in one
 * file.
 */
final class TreeWriter {
    /** A value that has no form here; what it belongs to is not kept. */
    static final class Formless extends Exception {
        private static final long serialVersionUID = 1;

        Formless(String what) {
            super("no form in which it could be kept: " + what, null, false, false);
        }
    }

    private final SourceFile file;
    private final Map<Class<?>, Integer> types = new HashMap<>();
    private byte[] bytes;
    private int length;

    /** @param file in which all places lie */
    TreeWriter(SourceFile file) {
        this(file, 1 << 10);
    }

    /** @param room bytes that are likely needed */
    TreeWriter(SourceFile file, int room) {
        this.file = file;
        this.bytes = new byte[room];
    }

    byte[] bytes() {
        return length == bytes.length ? bytes : Arrays.copyOf(bytes, length);
    }

    void value(Object value) throws Formless {
        if (value instanceof String text) {
            letter('s');
            text(text);
        } else if (value instanceof Prose prose && prose.equals(Prose.plain(prose.markdown()))) {
            letter('p');
            text(prose.markdown());
        } else if (value instanceof Span span) {
            letter('a');
            place(span);
        } else if (value instanceof Record record) {
            letter('r');
            record(record);
        } else if (value instanceof List<?> list) {
            letter('l');
            number(list.size());
            for (Object item : list) {
                value(item);
            }
        } else if (value instanceof Optional<?> optional) {
            letter(optional.isPresent() ? 'o' : 'e');
            if (optional.isPresent()) {
                value(optional.get());
            }
        } else if (value instanceof Enum<?> constant) {
            letter('c');
            type(constant.getDeclaringClass());
            number(constant.ordinal());
        } else {
            single(value);
        }
    }

    private void single(Object value) throws Formless {
        if (value instanceof Integer number) {
            letter('i');
            number(number);
        } else if (value instanceof Double number) {
            letter('d');
            eight(Double.doubleToRawLongBits(number));
        } else if (value instanceof Boolean truth) {
            letter(truth ? 't' : 'f');
        } else if (value instanceof LocalDate date) {
            letter('w');
            eight(date.toEpochDay());
        } else if (value instanceof MonthDay day) {
            letter('m');
            number(day.getMonthValue());
            number(day.getDayOfMonth());
        } else if (value instanceof TemperatureRecord record) {
            letter('T');
            temperatures(record);
        } else {
            throw new Formless("a " + value.getClass().getName());
        }
    }

    /** A place in the file; an offset is all that tells it from others. */
    void place(Span span) throws Formless {
        if (!span.file().equals(file)) {
            throw new Formless("a place in another file, " + span.place());
        }
        number(span.start());
        number(span.end() - span.start());
    }

    void text(String text) throws Formless {
        byte[] encoded = text.getBytes(StandardCharsets.UTF_8);
        if (!new String(encoded, StandardCharsets.UTF_8).equals(text)) {
            throw new Formless("half a pair of signs");
        }
        raw(encoded, 0, encoded.length);
    }

    private void record(Record record) throws Formless {
        type(record.getClass());
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            try {
                Method accessor = component.getAccessor();
                accessor.setAccessible(true);
                value(accessor.invoke(record));
            } catch (ReflectiveOperationException unreadable) {
                throw new Formless(component.toString());
            }
        }
    }

    /** By its number among those met so far; a new one by its name. */
    private void type(Class<?> type) throws Formless {
        Integer known = types.putIfAbsent(type, types.size());
        if (known == null) {
            number(types.size() - 1);
            text(type.getName());
        } else {
            number(known);
        }
    }

    private void temperatures(TemperatureRecord record) throws Formless {
        value(record.unit());
        List<DayTemperature> days = record.days();
        number(days.size());
        long before = 0;
        for (DayTemperature day : days) {
            number((int) (day.date().toEpochDay() - before));
            before = day.date().toEpochDay();
            degrees(day.min());
            degrees(day.max());
        }
    }

    /** Tenths, as nearly all are written, or whatever it is behind a number that tenths cannot be. */
    private void degrees(double degrees) {
        long tenths = Math.round(degrees * 10);
        if (Math.abs(tenths) < TreeReader.NO_TENTHS
                && Double.doubleToRawLongBits(tenths / 10.0) == Double.doubleToRawLongBits(degrees)) {
            number((int) tenths);
        } else {
            number(TreeReader.NO_TENTHS);
            eight(Double.doubleToRawLongBits(degrees));
        }
    }

    private void letter(char letter) {
        room(1);
        bytes[length++] = (byte) letter;
    }

    /** Small ones of either sign in one byte, seven bits a byte, the lowest first. */
    void number(int number) {
        room(5);
        int left = number << 1 ^ number >> 31;
        while ((left & ~0x7f) != 0) {
            bytes[length++] = (byte) (left | 0x80);
            left >>>= 7;
        }
        bytes[length++] = (byte) left;
    }

    private void eight(long bits) {
        room(8);
        for (int shift = 56; shift >= 0; shift -= 8) {
            bytes[length++] = (byte) (bits >>> shift);
        }
    }

    /** A run of bytes behind its length. */
    void raw(byte[] of, int from, int size) {
        number(size);
        room(size);
        System.arraycopy(of, from, bytes, length, size);
        length += size;
    }

    private void room(int more) {
        if (length + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, length + more));
        }
    }
}
