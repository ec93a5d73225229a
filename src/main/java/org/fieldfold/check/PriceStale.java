package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Price;
import org.fieldfold.source.Finding;

/** A price was looked up for this edition, and something leans on it. */
final class PriceStale implements Rule {
    @Override
    public String id() {
        return "price-stale";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        int months = base.edition().value().maxAgeMonths();
        for (Placed<Price> price : base.prices().values()) {
            LocalDate day = price.value().asOf();
            if (day.isAfter(asOf) || day.plusMonths(months).isBefore(asOf)) {
                found.accept(Finding.warning(price.at("as-of"), id(), "expected a price of the last " + months
                        + " months before " + asOf + ", found one of " + day,
                        "look it up again; the thresholds that lean on it are worked out anew"));
            }
        }
    }
}
