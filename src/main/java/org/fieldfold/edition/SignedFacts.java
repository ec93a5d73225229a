package org.fieldfold.edition;

import org.fieldfold.entry.Reviewed;

/**
 * What a reviewer signed: the facts of an entry, known by a short hash of their canonical form. Moved lines,
 * comments and words broken otherwise change nothing. Materials, prices and drawings are records of their own; what
 * was signed of them is said by {@link SignedWith}.
 */
public final class SignedFacts {
    /** 48 bits: enough to notice an edit, not to stop somebody who wants to deceive. */
    private static final int DIGITS = 12;

    private SignedFacts() {
    }

    /** The hash of an entry's facts as they are now, in hexadecimal figures. */
    public static String hash(Reviewed entry) {
        return Snapshot.known(entry).map(known -> known.facts().sha256().substring(0, DIGITS))
                .orElseThrow(() -> new IllegalArgumentException("expected an entry with facts, found "
                        + entry.id()));
    }

    /** Whether an entry says something else than what was signed; never for one that was signed by hand. */
    public static boolean changed(Reviewed entry) {
        return entry.signedFacts().filter(signed -> !signed.equals(hash(entry))).isPresent();
    }
}
