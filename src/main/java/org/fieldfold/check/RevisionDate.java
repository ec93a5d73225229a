package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Reviewed;
import org.fieldfold.source.Finding;

/** Everything was re-read, not in the future, and not longer ago than the edition allows. */
final class RevisionDate implements Rule {
    @Override
    public String id() {
        return "revision-date";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        int months = base.edition().value().maxAgeMonths();
        for (Placed<? extends Reviewed> placed : base.reviewed()) {
            Optional<LocalDate> revised = placed.value().revised();
            String sign = "'fieldfold sign " + placed.value().id() + " --by REVIEWER' then writes the day";
            if (revised.isEmpty() && placed.value().reviser().isEmpty()) {
                continue; // nobody signed at all: reviser-missing says so
            }
            if (revised.isEmpty()) {
                found.accept(Finding.error(placed.at(), id(), "expected the day on which '" + placed.value()
                        .id() + "' was last re-read, found none", "re-read it; " + sign));
            } else if (revised.get().isAfter(asOf)) {
                found.accept(Finding.error(placed.at("revised"), id(), "expected a day not after " + asOf
                        + ", found " + revised.get(), "a text cannot have been re-read in the future"));
            } else if (revised.get().plusMonths(months).isBefore(asOf)) {
                found.accept(Finding.error(placed.at("revised"), id(), "expected a day within " + months
                        + " months before " + asOf + ", found " + revised.get(),
                        "re-read it; " + sign));
            }
        }
    }
}
