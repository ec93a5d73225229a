package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.source.Finding;

/** An edition is issued before it holds, and holds for no longer than the next one is late. */
final class EditionDates implements Rule {
    @Override
    public String id() {
        return "edition-dates";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Edition edition = base.edition().value();
        if (edition.issued().isAfter(edition.validUntil()) || !edition.validFrom()
                .isBefore(edition.validUntil())) {
            found.accept(Finding.error(base.edition().at("valid-until"), id(), "expected a last day after "
                    + edition.validFrom() + " and " + edition.issued() + ", found " + edition.validUntil(),
                    "'issued', 'valid-from' and 'valid-until' follow each other"));
        } else if (edition.validFrom().plusMonths(LONGEST_MONTHS).isBefore(edition.validUntil())) {
            found.accept(Finding.error(base.edition().at("valid-until"), id(),
                    "expected an edition that holds for at most "
                    + LONGEST_MONTHS + " months, found " + edition.validFrom() + " to "
                    + edition.validUntil(),
                    "last year's advice is not next year's"));
        }
        if (edition.issued().getYear() != edition.year() && edition.validFrom().getYear() != edition.year()) {
            found.accept(Finding.error(base.edition().at("year"), id(),
                    "expected the year in which the edition is issued or "
                    + "begins to hold, found " + edition.year(), "change 'year:' or the dates"));
        }
    }

    private static final int LONGEST_MONTHS = 14;
}
