package org.fieldfold.entry;

import java.util.List;
import java.util.Optional;

/** Modes of action over the broods of a season. */
public record SeasonRotation(
        @Describe("most uses of one group in a season") int mostUses,
        @Describe("broods in order; one that is left alone has no materials") List<Brood> broods,
        @Describe("id of the source") Optional<String> source) {
    /** What is kept for one brood. */
    public record Brood(
            @Describe("which, as in 'first brood'") @Translated String name,
            @Describe("ids of the active ingredients kept for it") List<String> materials) {
    }
}
