package org.fieldfold.entry;

import java.util.List;
import java.util.Optional;

/** A trap crop around a field: the share of the field that it takes. */
public record BorderSize(
        @Describe("share of the field, percent") double share,
        @Describe("foot or metre, of the fields in the table") LengthUnit unit,
        @Describe("sides of square fields for the table") List<Double> fields,
        @Describe("id of the source") Optional<String> source) {
}
