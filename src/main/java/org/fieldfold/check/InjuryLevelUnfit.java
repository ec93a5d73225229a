package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Map;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.InjuryTerms;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Price;
import org.fieldfold.scouting.decision.PriceTable;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/** The terms of an economic injury level make one: no price, loss or effect of 0, no share above the whole. */
final class InjuryLevelUnfit implements PestRule {
    @Override
    public String id() {
        return "injury-level-unfit";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (int i = 0; i < pest.value().thresholds().size(); i++) {
            Span span = pest.at("thresholds", i, "injury-level");
            pest.value().thresholds().get(i).injuryLevel().ifPresent(terms ->
                    check(terms, base.prices(), span, found));
        }
    }

    private void check(InjuryTerms terms, Map<String, Placed<Price>> prices, Span span,
            Consumer<Finding> found) {
        if (!prices.containsKey(terms.cost()) || !prices.containsKey(terms.value())) {
            return; // an unknown reference is a finding of form
        }
        try {
            var level = terms.level(prices.get(terms.cost()).value().value(),
                    prices.get(terms.value()).value().value());
            level.actionThreshold(terms.share());
            if (!terms.tableCosts().isEmpty() || !terms.tableValues().isEmpty()) {
                PriceTable.of(level, terms.share(), terms.tableValues(), terms.tableCosts());
            }
        } catch (IllegalArgumentException impossible) {
            found.accept(Finding.error(span, id(), "expected terms that make an injury level, found that "
                    + impossible.getMessage(), "cost and value are prices above 0; kill and share lie above 0 "
                    + "and are at most 1; the table's prices rise"));
        }
    }
}
