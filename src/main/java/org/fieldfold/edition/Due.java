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
     * Never signed, not signed since the last edition was issued, or signed longer ago than the edition
     * allows on its planned day of issue.
     */
    public static boolean isDue(Reviewed entry, Edition edition) {
        return entry.reviser().isEmpty() || entry.revised().map(day -> isStale(day, edition)).orElse(true);
    }

    private static boolean isStale(LocalDate day, Edition edition) {
        return edition.reReadAfter().filter(last -> !day.isAfter(last)).isPresent()
                || day.plusMonths(edition.maxAgeMonths()).isBefore(edition.issued());
    }

    /** All entries that are due. */
    public static List<? extends Placed<? extends Reviewed>> in(ContentBase base) {
        Edition edition = base.edition().value();
        return base.reviewed().stream().filter(entry -> isDue(entry.value(), edition)).toList();
    }
}
