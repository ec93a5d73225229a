package org.fieldfold.entry;

import java.util.Optional;

/** What is said about a figure. */
public record FigureNote(
        @Describe("what is printed beneath, as in adult or damage") @Translated String caption,
        @Describe("what it shows") Subject shows,
        @Describe("what a person who cannot see it needs to know") @Translated Optional<String> alt,
        @Describe("who made it") Optional<String> credit,
        @Describe("licence") Optional<String> licence,
        @Describe("why it may be printed and given on; asked while its maker has not answered")
        Optional<Release> release,
        @Describe("true body length in mm; leave out for damage") Optional<SizeRange> trueSize) {
    /** What a figure shows: a stage of an entry, its damage, or a practice. */
    public record Subject(
            @Describe("id of the pest, natural enemy or practice") String entry,
            @Describe("life stage") Optional<LifeStage> stage,
            @Describe("true when it shows damage") Optional<Boolean> damage) {
        public boolean showsDamage() {
            return damage.orElse(false);
        }
    }
}
