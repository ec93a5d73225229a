package org.fieldfold.fold;

/**
 * A side of the printed sheet: {@code FRONT} is the one that carries the cover, and the first page of the
 * PDF.
 */
public enum Side {
    FRONT, BACK;

    public Side other() {
        return this == FRONT ? BACK : FRONT;
    }
}
