package org.fieldfold.entry;

import java.time.LocalDate;

/**
 * What an office adds to an entry on its own copies. It stands beside what the base says, marked as local,
 * and changes nothing of it.
 */
public record LocalNote(
        @Describe("id of the pest entry on whose panel it stands") String entry,
        @Describe("what is so here, in a sentence or two; no counts, no materials: those are the base's")
        Text text,
        @Describe("who signs it: somebody at this office") String by,
        @Describe("day on which it was written; it is due again after as long as an edition holds")
        LocalDate date) {
}
