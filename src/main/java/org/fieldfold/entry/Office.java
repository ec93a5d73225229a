package org.fieldfold.entry;

import java.util.List;
import java.util.Optional;
import org.fieldfold.fold.FlipEdge;

/** A county office. */
public record Office(
        @Describe("the file's name without its ending") String id,
        @Describe("name of the office") @Translated String name,
        @Describe("county") String county,
        @Describe("languages it prints, as in en, es") List<String> languages,
        @Describe("paper it prints on") String paper,
        @Describe("edge about which its printer turns the sheet; leave out for short") Optional<FlipEdge> flip,
        @Describe("id of its weather station") String station,
        @Describe("ids of the guides it hands out; leave out for all") List<String> guides,
        @Describe("how it is reached") Contact contact,
        @Describe("what it asks to have looked at before the next edition") List<OfficeRequest> requests) {
}
