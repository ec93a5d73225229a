package org.fieldfold.source;

/**
 * A stretch of a source file.
 *
 * @param start offset of the first character
 * @param end offset behind the last character; equal to {@code start} for a place between two characters
 */
public record Span(SourceFile file, int start, int end) implements Comparable<Span> {
    public Span {
        if (start < 0 || end < start) {
            throw new IllegalArgumentException("span from " + start + " to " + end + " in " + file);
        }
    }

    /** The first place of a file: for what is wrong with the file as a whole. */
    public static Span startOf(SourceFile file) {
        return new Span(file, 0, 0);
    }

    public int line() {
        return file.line(start);
    }

    public int column() {
        return file.column(start);
    }

    /** {@code path:line:column}, which editors turn into a link. */
    public String place() {
        return file.path() + ":" + line() + ":" + column();
    }

    @Override
    public int compareTo(Span other) {
        int byFile = file == other.file ? 0 : file.compareTo(other.file);
        return byFile != 0 ? byFile : start != other.start ? Integer.compare(start, other.start)
                : Integer.compare(end, other.end);
    }
}
