package org.fieldfold.entry;

import java.time.LocalDate;
import java.util.Optional;

/** Something that growers at a counter ask to have looked at in the winter. */
public record OfficeRequest(
        @Describe("id of the entry") String entry,
        @Describe("what was asked, in a sentence") String what,
        @Describe("day on which it was noted") Optional<LocalDate> noted) {
}
