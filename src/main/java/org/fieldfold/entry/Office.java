package org.fieldfold.entry;

import java.util.List;
import java.util.Optional;
import org.fieldfold.fold.FlipEdge;

/**
 * A county office. It may leave out entries and add notes to others; it has no key for a fact, a threshold, a
 * caution or an order of its own.
 */
public record Office(
        @Describe("the file's name without its ending") String id,
        @Describe("name of the office") @Translated String name,
        @Describe("county") String county,
        @Describe("languages it prints, as in en, es") List<String> languages,
        @Describe("paper it prints on") String paper,
        @Describe("edge about which its printer turns the sheet; leave out for short") Optional<FlipEdge> flip,
        @Describe("units on its guides: metric, customary or both; leave out for the edition's") Optional<Units> units,
        @Describe("id of its weather station") String station,
        @Describe("ids of the guides it hands out; leave out for all") List<String> guides,
        @Describe("what else it prints of its guides, with its own telephone number: large-print, poster")
        List<GuideForm> forms,
        @Describe("ids of the pest entries that its copies go without") List<String> leaveOut,
        @Describe("its own notes, each on the panel of an entry, marked as local") List<LocalNote> notes,
        @Describe("how it is reached") Contact contact,
        @Describe("what it asks to have looked at before the next edition") List<OfficeRequest> requests) {
    /** Whether it hands out a guide at all. */
    public boolean handsOut(Guide guide) {
        return (guides.isEmpty() || guides.contains(guide.id()))
                && (leaveOut.isEmpty() || !keeps(guide).entries().isEmpty());
    }

    /** A guide as its copies have it: without the entries that it leaves out, the others in their order. */
    public Guide keeps(Guide guide) {
        List<String> kept = guide.entries().stream().filter(entry -> !leaveOut.contains(entry)).toList();
        return kept.size() == guide.entries().size() ? guide : guide.of(kept);
    }

    /** Whether its copies of a guide differ from those of others by more than whom to call. */
    public boolean changes(Guide guide) {
        return guide.entries().stream().anyMatch(entry -> leaveOut.contains(entry)
                || notes.stream().anyMatch(note -> note.entry().equals(entry)));
    }
}
