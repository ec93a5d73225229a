package org.fieldfold.content;

import java.util.Arrays;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/**
 * The text of a file with slips mended, so that reading can go on behind them, and the way back to the file's
 * own offsets. A sign that must not act as a sign is shifted into Unicode's private use area and shifted back
 * in values.
 */
final class MendedText {
    private static final char SHIFT = '\uE000';
    private static final char SHIFT_END = '\uE07F';
    private static final int LONGEST_LINE = 1000;

    private final SourceFile file;
    private final String text;
    /** Offset in the file by offset in the text; empty while they are the same. */
    private final int[] origin;
    /** Offset in the text by code point; empty while all are one character long. */
    private final int[] byCodePoint;

    MendedText(SourceFile file) {
        this(file, file.text(), new int[0]);
    }

    private MendedText(SourceFile file, String text, int[] origin) {
        this.file = file;
        this.text = text;
        this.origin = origin;
        this.byCodePoint = codePoints(text);
    }

    private static int[] codePoints(String text) {
        int count = text.codePointCount(0, text.length());
        if (count == text.length()) {
            return new int[0];
        }
        int[] offsets = new int[count + 1];
        for (int i = 0, at = 0; i <= count; i++) {
            offsets[i] = at;
            at += at < text.length() ? Character.charCount(text.codePointAt(at)) : 0;
        }
        return offsets;
    }

    String text() {
        return text;
    }

    SourceFile file() {
        return file;
    }

    boolean isMended() {
        return origin.length > 0;
    }

    /** The offset in the text of a code point, as the YAML reader counts. */
    int offset(int codePoint) {
        if (byCodePoint.length == 0) {
            return Math.min(codePoint, text.length());
        }
        return byCodePoint[Math.min(codePoint, byCodePoint.length - 1)];
    }

    /** The stretch of the file from which a stretch of the text came. */
    Span span(int from, int to) {
        int start = original(from);
        return new Span(file, start, Math.max(start, original(to)));
    }

    private int original(int offset) {
        if (origin.length == 0) {
            return offset;
        }
        return origin[Math.min(offset, origin.length - 1)];
    }

    /** The same with {@code by} in place of what stands between two offsets. */
    MendedText replace(int from, int to, String by) {
        int[] moved = new int[text.length() - (to - from) + by.length() + 1];
        for (int i = 0; i < moved.length; i++) {
            int was = i < from ? i
                    : i < from + by.length() ? Math.min(from + (i - from), Math.max(from, to - 1))
                    : i - by.length() + (to - from);
            moved[i] = original(was);
        }
        return new MendedText(file, text.substring(0, from) + by + text.substring(to), moved);
    }

    /** The same with two spaces for each tab before the first word of a line. */
    MendedText withoutLeadingTabs() {
        StringBuilder spaced = new StringBuilder(text.length() + 100);
        int[] moved = new int[2 * text.length() + 1];
        boolean leading = true;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            leading = isLineEnd(c) || leading && (c == ' ' || c == '\t');
            for (int copies = leading && c == '\t' ? 2 : 1; copies > 0; copies--) {
                moved[spaced.length()] = original(i);
                spaced.append(leading && c == '\t' ? ' ' : c);
            }
        }
        moved[spaced.length()] = original(text.length());
        return new MendedText(file, spaced.toString(), Arrays.copyOf(moved, spaced.length() + 1));
    }

    /** The same with the sign at {@code offset} made an ordinary character. */
    MendedText shift(int offset) {
        return replace(offset, offset + 1, String.valueOf((char) (SHIFT + text.charAt(offset) % 0x80)));
    }

    /** The same with the line around {@code offset} blank. */
    MendedText blank(int offset) {
        int from = lineStart(offset);
        int to = lineEnd(offset);
        return replace(from, to, " ".repeat(to - from));
    }

    /** A value as the author wrote it. */
    static String unshifted(String value) {
        char[] chars = value.toCharArray();
        for (int i = 0; i < chars.length; i++) {
            if (chars[i] >= SHIFT && chars[i] <= SHIFT_END) {
                chars[i] -= SHIFT;
            }
        }
        return new String(chars);
    }

    static boolean isShifted(char c) {
        return c >= SHIFT && c <= SHIFT_END;
    }

    int lineStart(int offset) {
        int at = Math.min(offset, text.length());
        while (at > 0 && !isLineEnd(text.charAt(at - 1))) {
            at--;
        }
        return at;
    }

    int lineEnd(int offset) {
        int at = Math.min(offset, text.length());
        while (at < text.length() && !isLineEnd(text.charAt(at))) {
            at++;
        }
        return at;
    }

    /** The line around {@code offset}; no more of it than is needed to see what it is. */
    String line(int offset) {
        int from = lineStart(offset);
        return text.substring(from, Math.min(lineEnd(offset), from + LONGEST_LINE));
    }

    private static boolean isLineEnd(char c) {
        return c == '\n' || c == '\r';
    }
}
