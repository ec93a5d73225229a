package org.fieldfold.pdf;

import java.io.OutputStream;
import java.util.Arrays;

/** A file while it is written, in memory. */
final class FileBytes extends OutputStream {
    private byte[] bytes;
    private int length;

    FileBytes(int expected) {
        bytes = new byte[expected];
    }

    @Override
    public void write(int one) {
        room(1);
        bytes[length++] = (byte) one;
    }

    @Override
    public void write(byte[] some, int from, int count) {
        room(count);
        System.arraycopy(some, from, bytes, length, count);
        length += count;
    }

    private void room(int count) {
        if (bytes.length - length < count) {
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, length + count));
        }
    }

    /** Characters of ASCII. */
    FileBytes ascii(String text) {
        room(text.length());
        for (int i = 0; i < text.length(); i++) {
            bytes[length++] = (byte) text.charAt(i);
        }
        return this;
    }

    FileBytes whole(int number) {
        return ascii(Integer.toString(number));
    }

    /** A line of a cross-reference table (ISO 32000-1, 7.5.4): 20 bytes. */
    FileBytes entry(int offset) {
        String digits = Integer.toString(offset);
        return ascii("0000000000".substring(digits.length())).ascii(digits).ascii(" 00000 n\r\n");
    }

    int length() {
        return length;
    }

    byte[] toBytes() {
        return Arrays.copyOf(bytes, length);
    }
}
