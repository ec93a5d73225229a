package org.fieldfold.pdf;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.COSWriter;

/**
 * Writes the objects of a file (ISO 32000-1, 7.3), each once, with whatever it refers to behind it. A dictionary
 * is an object of its own unless it is direct; arrays stand where they are.
 */
final class ObjectWriter {
    private final FileBytes out;
    private final Map<COSBase, Integer> before;
    private final Map<COSBase, Integer> numbers = new IdentityHashMap<>();
    private final Deque<COSDictionary> waiting = new ArrayDeque<>();
    private int[] offsets;
    private int next;

    /**
     * @param before numbers of objects that are in the file already
     * @param offsets of these, by number; 0 for one that is not written yet
     * @param next the first number that is free
     */
    ObjectWriter(FileBytes out, Map<COSBase, Integer> before, int[] offsets, int next) {
        this.out = out;
        this.before = before;
        this.offsets = Arrays.copyOf(offsets, Math.max(offsets.length, next) + 64);
        this.next = next;
    }

    /** Gives an object a number that was kept for it; it may be written later, or in another file. */
    void number(COSDictionary object, int number) {
        numbers.put(object, number);
    }

    /** Writes an object and whatever it refers to that is not there yet. */
    void write(COSDictionary object) throws IOException {
        if (!numbers.containsKey(object)) {
            numbers.put(object, next++);
        }
        waiting.add(object);
        while (!waiting.isEmpty()) {
            COSDictionary one = waiting.remove();
            int number = numbers.get(one);
            if (number >= offsets.length) {
                offsets = Arrays.copyOf(offsets, number * 2);
            }
            if (offsets[number] == 0) {
                offsets[number] = out.length();
                out.whole(number).ascii(" 0 obj\n");
                object(one);
                out.ascii("\nendobj\n");
            }
        }
    }

    private void object(COSDictionary object) throws IOException {
        dictionary(object);
        if (object instanceof StreamObject stream) {
            out.ascii("\nstream\n");
            out.write(stream.data(), 0, stream.data().length);
            out.ascii("\nendstream");
        }
    }

    private void dictionary(COSDictionary dictionary) throws IOException {
        out.ascii("<<");
        for (Map.Entry<COSName, COSBase> entry : dictionary.entrySet()) {
            entry.getKey().writePDF(out);
            out.write(' ');
            value(entry.getValue());
            out.write('\n');
        }
        if (dictionary instanceof StreamObject stream) {
            out.ascii("/Length ").whole(stream.data().length);
        }
        out.ascii(">>");
    }

    /** A value where it stands. */
    void value(COSBase value) throws IOException {
        if (value instanceof COSDictionary dictionary) {
            if (dictionary.isDirect() && !(dictionary instanceof StreamObject)) {
                dictionary(dictionary);
            } else {
                out.whole(reference(dictionary)).ascii(" 0 R");
            }
        } else if (value instanceof COSArray array) {
            out.write('[');
            for (int i = 0; i < array.size(); i++) {
                out.ascii(i == 0 ? "" : " ");
                value(array.get(i));
            }
            out.write(']');
        } else if (value instanceof COSName name) {
            name.writePDF(out);
        } else if (value instanceof COSInteger whole) {
            out.ascii(Long.toString(whole.longValue()));
        } else if (value instanceof COSFloat number) {
            number.writePDF(out);
        } else if (value instanceof COSString text) {
            COSWriter.writeString(text, out);
        } else if (value instanceof COSBoolean truth) {
            truth.writePDF(out);
        } else {
            throw new IllegalStateException("expected a value of a sheet's file, found " + value);
        }
    }

    private int reference(COSDictionary object) {
        Integer number = before.get(object);
        if (number == null) {
            number = numbers.get(object);
        }
        if (number == null) {
            number = next++;
            numbers.put(object, number);
            waiting.add(object);
        }
        return number;
    }

    Map<COSBase, Integer> numbers() {
        return numbers;
    }

    /** Where each object begins, by number. */
    int[] offsets() {
        return Arrays.copyOf(offsets, next);
    }

    /** How many objects there are, and one for the first, which is free. */
    int count() {
        return next;
    }
}
