package org.fieldfold.entry;

/** Another animal that is taken for this one, and the mark that tells them apart. */
public record LookAlike(
        @Describe("id of the other pest or natural enemy") String entry,
        @Describe("the mark that tells them apart") Text mark) {
}
