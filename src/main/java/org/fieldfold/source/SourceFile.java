package org.fieldfold.source;

import java.util.ArrayList;
import java.util.List;

/**
 * A text file of the content base, as it was read. Positions are kept as offsets into {@link #text}; line and
 * column are derived when somebody asks.
 *
 * <p>Two files are the same when their paths are.
 */
public final class SourceFile implements Comparable<SourceFile> {
    private final String path;
    private final String text;
    /** Made when somebody asks: most files never have a finding. */
    private volatile int[] lineStarts = {};

    /**
     * @param path relative to the content base's parent, with {@code /}, as it is shown to people
     * @param text the decoded text, without a byte-order mark; LF, CRLF and CR all end a line
     */
    public SourceFile(String path, String text) {
        this.path = path;
        this.text = text;
    }

    private static int[] lineStarts(String text) {
        List<Integer> starts = new ArrayList<>();
        starts.add(0);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'))) {
                starts.add(i + 1);
            }
        }
        return starts.stream().mapToInt(Integer::intValue).toArray();
    }

    private int[] lineStarts() {
        int[] starts = lineStarts;
        if (starts.length == 0) {
            starts = lineStarts(text);
            lineStarts = starts;
        }
        return starts;
    }

    public String path() {
        return path;
    }

    public String text() {
        return text;
    }

    /** The 1-based line that holds {@code offset}. */
    public int line(int offset) {
        int at = java.util.Arrays.binarySearch(lineStarts(), Math.max(0, Math.min(offset, text.length())));
        return at >= 0 ? at + 1 : -at - 1;
    }

    /** The 1-based column of {@code offset}, counted in characters as a reader counts them (code points). */
    public int column(int offset) {
        int end = Math.max(0, Math.min(offset, text.length()));
        return text.codePointCount(lineStarts()[line(end) - 1], end) + 1;
    }

    /**
     * The offset at which the 1-based {@code line} begins, or the end of the text for a line past the last.
     */
    public int lineStart(int line) {
        return line - 1 < lineStarts().length ? lineStarts()[line - 1] : text.length();
    }

    public int lineCount() {
        return lineStarts().length;
    }

    /** The text of a 1-based line, without its end. */
    public String lineText(int line) {
        int from = lineStart(line);
        int to = lineStart(line + 1);
        while (to > from && (text.charAt(to - 1) == '\n' || text.charAt(to - 1) == '\r')) {
            to--;
        }
        return text.substring(from, to);
    }

    @Override
    public int compareTo(SourceFile other) {
        return path.compareTo(other.path);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SourceFile file && file.path.equals(path);
    }

    @Override
    public int hashCode() {
        return path.hashCode();
    }

    @Override
    public String toString() {
        return path;
    }
}
