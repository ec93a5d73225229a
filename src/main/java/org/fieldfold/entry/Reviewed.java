package org.fieldfold.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What is re-read every winter, and leans on sources: pests, natural enemies, practices. */
public interface Reviewed {
    String id();

    List<String> sources();

    Optional<LocalDate> revised();

    Optional<String> reviser();

    /** Whether the reviewer signed that nothing needed to change since the last edition. */
    Optional<Boolean> carriedOver();

    /** Hash of the facts that the reviewer signed; empty when the entry was signed by hand. */
    Optional<String> signedFacts();

    /**
     * The materials, prices and drawings that stand with the entry on paper, each with a hash of what it was when
     * the entry was signed; empty where there were none, or the entry was signed by hand.
     */
    Optional<String> signedWith();
}
