package org.fieldfold.entry;

import java.util.List;
import java.util.Optional;

/** What one foldout covers. */
public record Guide(
        @Describe("the file's name without its ending") String id,
        @Describe("title on the cover") @Translated String title,
        @Describe("what it is for, in a line") @Translated String purpose,
        @Describe("for whom") Audience audience,
        @Describe("ids of the crops; the first gives the ink") List<String> crops,
        @Describe("ids of the entries, in the order in which they are read") List<String> entries,
        @Describe("id of the fold scheme, as in letter or accordion-4") String scheme,
        @Describe("papers: letter, a4 and so on; leave out for those of edition.yaml") List<String> papers,
        @Describe("sizes of body type between which it may be set") Optional<TypeLimits> type,
        @Describe("how to scout: lines for the panel behind the cover") List<Text> scouting) {
    /** The same of other entries. */
    public Guide of(List<String> others) {
        return new Guide(id, title, purpose, audience, crops, others, scheme, papers, type, scouting);
    }

    /** The same for another purpose. */
    public Guide toServe(String other) {
        return new Guide(id, title, other, audience, crops, entries, scheme, papers, type, scouting);
    }
}
