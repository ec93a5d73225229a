package org.fieldfold.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** This year's publication. */
public record Edition(
        @Describe("year on every cover") int year,
        @Describe("title of the whole") @Translated String title,
        @Describe("who publishes it") @Translated String publisher,
        @Describe("day on which it is to be issued: what staleness is measured against") LocalDate issued,
        @Describe("first day on which it holds") LocalDate validFrom,
        @Describe("last day on which it holds") LocalDate validUntil,
        @Describe("months after which an entry must be re-read") int maxAgeMonths,
        @Describe("entries that were re-read on or before this day are due again: the day on which the last "
        + "edition was issued, or was to be") Optional<LocalDate> reReadAfter,
        @Describe("languages, the base language first") List<String> languages,
        @Describe("papers printed when a guide names none") List<String> papers,
        @Describe("units on guides: metric, customary or both; leave out to print each quantity as it was entered")
        Optional<Units> units,
        @Describe("address of the hosted handbook") String handbook,
        @Describe("office on generic copies") Contact contact,
        @Describe("who may sign") List<Reviewer> reviewers,
        @Describe("cautions on every guide") List<Text> cautions,
        @Describe("how much warmer it is under plastic; leave out to give no dates for tunnels")
        Optional<UnderPlastic> underPlastic,
        @Describe("notice on every page when this is not real advice") Optional<Text> notice) {
}
