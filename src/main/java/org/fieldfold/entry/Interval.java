package org.fieldfold.entry;

/**
 * A range of waiting times in days (pre-harvest) or hours (restricted entry), over the products of a
 * material.
 */
public record Interval(@Describe("shortest on any label") int from,
        @Describe("longest on any label") int to) {
}
