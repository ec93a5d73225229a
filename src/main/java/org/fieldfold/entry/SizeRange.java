package org.fieldfold.entry;

/** Body length in millimetres. Whether {@code from <= to} is a check's business, not the record's. */
public record SizeRange(@Describe("smallest, mm") double from, @Describe("largest, mm") double to) {
    public double mean() {
        return (from + to) / 2;
    }
}
