package org.fieldfold.pdf;

import java.util.Arrays;

/** A content stream in the making. Numbers have at most three decimals, whatever the locale. */
final class Operators {
    private static final int[] TENS = {100_000, 10_000, 1000, 100, 10, 1};

    private byte[] bytes = new byte[1 << 14];
    private int length;

    /** Thousandths of a point: positions are rounded once, so that steps between them do not drift. */
    static long thousandths(double value) {
        if (!(Math.abs(value) < 1e9)) {
            throw new IllegalArgumentException("not a length on paper: " + value);
        }
        return Math.round(value * 1000);
    }

    Operators number(double value) {
        return milli(thousandths(value));
    }

    Operators milli(long thousandths) {
        return fixed(thousandths, 1000, 3);
    }

    /**
     * A number of a matrix that scales or turns: six decimals, for it is multiplied by hundreds of points.
     */
    Operators fine(double value) {
        return fixed(Math.round(value * 1_000_000), 1_000_000, 0);
    }

    private Operators fixed(long parts, int whole, int firstTen) {
        long left = parts;
        if (left < 0) {
            put('-');
            left = -left;
        }
        digits(left / whole);
        int decimals = (int) (left % whole);
        if (decimals != 0) {
            put('.');
            for (int i = firstTen; decimals != 0; i++) {
                put('0' + decimals / TENS[i]);
                decimals %= TENS[i];
            }
        }
        return put(' ');
    }

    Operators whole(int value) {
        digits(value);
        return this;
    }

    private void digits(long value) {
        if (value >= 10) {
            digits(value / 10);
        }
        put((int) ('0' + value % 10));
    }

    /** Writes operators and operands as they are; plain ASCII. */
    Operators raw(String ascii) {
        for (int i = 0; i < ascii.length(); i++) {
            put(ascii.charAt(i));
        }
        return this;
    }

    /** An operator that takes these numbers. */
    Operators op(String name, double... operands) {
        for (double operand : operands) {
            number(operand);
        }
        return raw(name).put('\n');
    }

    Operators beginText() {
        return put('(');
    }

    /** Two bytes of a string of glyphs. */
    Operators glyph(int glyph) {
        return escaped(glyph >> 8).escaped(glyph & 0xff);
    }

    Operators endText() {
        return raw(")Tj\n");
    }

    private Operators escaped(int value) {
        switch (value) {
            case '(', ')', '\\' -> put('\\').put(value);
            case '\r' -> raw("\\r");
            default -> put(value);
        }
        return this;
    }

    private Operators put(int value) {
        if (length == bytes.length) {
            bytes = Arrays.copyOf(bytes, 2 * length);
        }
        bytes[length++] = (byte) value;
        return this;
    }

    byte[] toBytes() {
        return Arrays.copyOf(bytes, length);
    }
}
