package org.fieldfold.entry;

/** Somebody who may re-read and sign entries. */
public record Reviewer(
        @Describe("short id") String id,
        @Describe("name") String name,
        @Describe("what they are") @Translated String role) {
}
