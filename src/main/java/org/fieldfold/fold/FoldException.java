package org.fieldfold.fold;

/** A scheme that cannot be read or folded; the message says why, lower case, without a full stop. */
public final class FoldException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public FoldException(String reason) {
        super(reason);
    }
}
