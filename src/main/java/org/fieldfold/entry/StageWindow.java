package org.fieldfold.entry;

/** Growth stages of a crop, as two-digit BBCH codes from 0 to 99, both included. */
public record StageWindow(@Describe("first BBCH code, 0 to 99") int from,
        @Describe("last BBCH code") int to) {
    /** Flowering is BBCH principal stage 6, codes 60 to 69 (Meier 2018). */
    public static final StageWindow FLOWERING = new StageWindow(60, 69);

    public boolean overlaps(StageWindow other) {
        return from <= other.to && other.from <= to;
    }
}
