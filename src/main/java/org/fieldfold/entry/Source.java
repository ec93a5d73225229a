package org.fieldfold.entry;

import java.util.Optional;

/** A publication that a fact leans on. */
public record Source(
        @Describe("short id") String id,
        @Describe("authors or body") @Translated(optional = true) String authors,
        @Describe("year") Optional<Integer> year,
        @Describe("title") @Translated(optional = true) String title,
        @Describe("where it appeared") @Translated(optional = true) Optional<String> published,
        @Describe("read, or value-from-memory where nobody re-read it") Standing standing,
        @Describe("id of the source that takes its place") Optional<String> supersededBy) {
}
