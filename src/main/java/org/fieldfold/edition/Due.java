package org.fieldfold.edition;

import java.time.LocalDate;
import java.util.List;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Reviewed;

/** Whether an entry must be re-read before this edition is issued. */
public final class Due {
    private Due() {
    }

    /**
     * Never signed, not signed since the last edition was issued, signed longer ago than the edition allows
     * on its planned day of issue, or changed after it was signed, itself or in what stands with it on paper.
     */
    public static boolean isDue(Reviewed entry, ContentBase base) {
        return isOfAge(entry, base.edition().value()) || SignedFacts.changed(entry)
                || SignedWith.changed(entry, base);
    }

    /** The same, whatever the entry says now. */
    static boolean isOfAge(Reviewed entry, Edition edition) {
        return entry.reviser().isEmpty() || entry.revised().map(day -> isStale(day, edition)).orElse(true);
    }

    private static boolean isStale(LocalDate day, Edition edition) {
        return edition.reReadAfter().filter(last -> !day.isAfter(last)).isPresent()
                || day.plusMonths(edition.maxAgeMonths()).isBefore(edition.issued());
    }

    /** How many are signed without a hash of what was signed, so that a later edit is not found. */
    public static int byHand(ContentBase base) {
        return (int) base.reviewed().stream().map(Placed::value).filter(entry ->
                entry.signedFacts().isEmpty() && !isDue(entry, base)).count();
    }

    /** All entries that are due. */
    public static List<? extends Placed<? extends Reviewed>> in(ContentBase base) {
        return base.reviewed().stream().filter(entry -> isDue(entry.value(), base)).toList();
    }
}
