package org.fieldfold.fold;

/** A scheme that cannot be read or folded; the message says why, lower case, without a full stop. */
public final class FoldException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String reason;
    private final int line;

    /** About the scheme as a whole. */
    public FoldException(String reason) {
        super(reason);
        this.reason = reason;
        this.line = 0;
    }

    /** About a line of its file. */
    FoldException(String name, int line, String reason) {
        super(name + ":" + line + ": " + reason);
        this.reason = reason;
        this.line = line;
    }

    /** The message without the place. */
    public String reason() {
        return reason;
    }

    /** The line of the file, from 1; 0 for the scheme as a whole. */
    public int line() {
        return line;
    }
}
