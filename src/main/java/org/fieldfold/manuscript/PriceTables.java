package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.InjuryTerms;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Price;
import org.fieldfold.entry.Threshold;
import org.fieldfold.prose.Run;
import org.fieldfold.scouting.CountCard;
import org.fieldfold.scouting.ThresholdFigure;
import org.fieldfold.scouting.decision.InjuryLevel;
import org.fieldfold.scouting.decision.PriceTable;
import org.fieldfold.source.Span;

/** Writes what a threshold is worth: where one would act at other prices, and how that is worked out. */
final class PriceTables {
    private final ContentBase base;
    private final PestEntry entry;
    private final Phrases phrases;

    PriceTables(ContentBase base, PestEntry entry, Phrases phrases) {
        this.base = base;
        this.entry = entry;
        this.phrases = phrases;
    }

    /** The table of a threshold's prices; none where there are no terms, or none that make a level. */
    List<Block> of(Threshold threshold, Span origin) {
        Optional<InjuryTerms> terms = threshold.injuryLevel();
        Optional<PriceTable> table = terms.flatMap(this::table);
        return table.<List<Block>>map(prices -> List.of(grid(threshold, terms.get(), prices, origin)))
                .orElse(List.of());
    }

    private Optional<PriceTable> table(InjuryTerms terms) {
        if (terms.tableCosts().isEmpty() || terms.tableValues().isEmpty()) {
            return Optional.empty();
        }
        try {
            return terms.level(base.prices()).map(level ->
                    PriceTable.of(level, terms.share(), terms.tableValues(), terms.tableCosts()));
        } catch (IllegalArgumentException impossible) {
            return Optional.empty(); // a check says so
        }
    }

    private Block grid(Threshold threshold, InjuryTerms terms, PriceTable table, Span origin) {
        List<List<Run>> header = new ArrayList<>();
        header.add(List.of(Run.strong(price(terms.cost()).unit())));
        table.values().forEach(value -> header.add(List.of(Run.strong(Figures.plain(value)))));
        List<List<List<Run>>> rows = new ArrayList<>();
        for (int i = 0; i < table.costs().size(); i++) {
            List<List<Run>> row = new ArrayList<>();
            row.add(List.of(Run.plain(Figures.plain(table.costs().get(i)))));
            table.rows().get(i).forEach(level -> row.add(List.of(Run.strong(act(threshold, level)))));
            rows.add(row);
        }
        String counted = threshold.counted().orElse(entry.names().common());
        return new Block.Grid(phrases.say("worth.caption", counted, price(terms.value()).unit()), header,
                rows, List.of(), true, origin);
    }

    private Price price(String id) {
        return base.prices().get(id).value();
    }

    /** A number to act at as it is used in the row: on the whole sample where there is a card. */
    private String act(Threshold threshold, double value) {
        Optional<CountCard> card = threshold.figure().flatMap(figure -> entry
                .monitoringOf(threshold, PestCounts.audience(threshold)).flatMap(Monitoring::plan)
                .filter(plan -> !figure.metric().isPercent() || value <= 100)
                .flatMap(plan -> CountCard.of(new ThresholdFigure(figure.metric(), value, figure.per(),
                        figure.days()), plan)));
        return card.map(one -> String.valueOf(one.actAt())).orElseGet(() ->
                Figures.rounded(value, 1) + (threshold.metric().isPercent() ? " %" : ""));
    }

    /** The formula in words, with today's prices in it. */
    List<Block> explained(Threshold threshold, Register register, Span origin) {
        Optional<InjuryLevel> level = threshold.injuryLevel().flatMap(terms -> terms.level(base.prices()));
        if (level.isEmpty()) {
            return List.of();
        }
        InjuryTerms terms = threshold.injuryLevel().get();
        Price cost = price(terms.cost());
        Price value = price(terms.value());
        String counted = threshold.counted().orElse(entry.names().common());
        Line line = Line.of().strong(phrases.say("worth.title") + " ").plain(phrases.say("worth.formula"));
        line.plain(" " + phrases.say("worth.now", cost.what(), Figures.plain(cost.value()), cost.unit(),
                value.what(), Figures.plain(value.value()), value.unit(),
                Figures.rounded(terms.injury() * terms.loss(), 3), Figures.rounded(terms.kill() * 100, 1),
                Figures.rounded(level.get().pests(), 2)));
        line.plain(" " + phrases.say("worth.share", Figures.rounded(terms.share() * 100, 1),
                Figures.rounded(terms.share() * level.get().pests(), 2), counted,
                phrases.date(cost.asOf().isBefore(value.asOf()) ? cost.asOf() : value.asOf())));
        line.plain(" ").add(register.brief(terms.source())).plain(".");
        return List.of(new Block.Paragraph(line.runs(), List.of(), origin));
    }
}
