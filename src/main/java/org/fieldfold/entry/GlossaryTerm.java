package org.fieldfold.entry;

import java.util.List;

/** A word of the trade in the base language, and the one that always stands for it in another. */
public record GlossaryTerm(
        @Describe("the word in the base language, in all its forms") List<String> base,
        @Describe("the word that stands for it") String term,
        @Describe("its other forms, as the plural") List<String> forms,
        @Describe("forms that are never used for it") List<String> avoid) {
}
