package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.DegreeDayEvent;
import org.fieldfold.entry.EarlyStop;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Threshold;
import org.fieldfold.prose.Run;
import org.fieldfold.scouting.Metric;
import org.fieldfold.scouting.sequential.SequentialPlan;
import org.fieldfold.scouting.sequential.StopTable;
import org.fieldfold.source.Span;

/**
 * Writes how to count, for all readers: each way of looking with its count card, then every published number
 * with its source, and numbers that contradict each other side by side.
 */
final class PestCounts {
    private final Register register;
    private final Placed<PestEntry> placed;
    private final PestEntry entry;
    private final Reader reader;
    private final PublishedNumber published;

    PestCounts(Register register, Placed<PestEntry> placed, Reader reader) {
        this.register = register;
        this.placed = placed;
        this.entry = placed.value();
        this.reader = reader;
        this.published = new PublishedNumber(register, entry);
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        for (Monitoring look : entry.monitoring()) {
            blocks.addAll(look(look));
        }
        blocks.addAll(disagreements());
        numbers().ifPresent(blocks::add);
        for (Threshold threshold : entry.thresholds()) {
            if (threshold.metric() == Metric.NONE || threshold.metric() == Metric.INTERVAL_TABLE) {
                blocks.addAll(cards(threshold).uncounted(threshold));
            }
        }
        entry.thresholds().forEach(threshold -> blocks.addAll(worth(threshold)));
        events().ifPresent(blocks::add);
        blocks.addAll(new HeatTables(reader.phrases()).of(entry.monitoring().stream()
                .flatMap(look -> look.season().stream()).flatMap(season -> season.events().stream()).toList(),
                placed.at("monitoring")));
        return blocks;
    }

    /** One way of looking: for whom, the card of its first number, how it is done, and when. */
    private List<Block> look(Monitoring look) {
        Span origin = placed.at("monitoring", entry.monitoring().indexOf(look));
        List<Block> blocks = new ArrayList<>();
        String only = reader.only(look.audiences());
        String name = register.phrases().word("book.method", look.method());
        blocks.add(new Block.Heading(4, Line.of().strong(only.isEmpty() ? name : only + ": " + name).runs(),
                origin));
        entry.thresholds().stream().filter(threshold -> usedBy(threshold, look))
                .filter(threshold -> cards(threshold).hasCard(threshold)).findFirst()
                .ifPresent(threshold -> blocks.add(cards(threshold).box(threshold)));
        entry.thresholds().stream().filter(threshold -> usedBy(threshold, look))
                .filter(threshold -> cards(threshold).hasCard(threshold)).findFirst()
                .ifPresent(threshold -> blocks.addAll(new SampleWords(entry, reader.phrases())
                        .of(threshold, look, origin)));
        blocks.addAll(ProseBlocks.of(look.how().full(),
                placed.at("monitoring", entry.monitoring().indexOf(look), "how")));
        List<Block.Fact> facts = new ArrayList<>();
        look.season().flatMap(season -> season.stages()).ifPresent(stages -> facts.add(Block.Fact.of(
                reader.say("book.season"), register.stages(entry.crops(), stages))));
        look.season().flatMap(season -> season.dates()).ifPresent(dates -> facts.add(Block.Fact.of(
                reader.say("book.season.days"),
                reader.say("book.season.dates", register.phrases().day(dates.from()),
                        register.phrases().day(dates.to())))));
        look.perArea().ifPresent(area -> facts.add(new Block.Fact(reader.say("area.title"),
                List.of(Run.plain(reader.say("book.page.walks")).to(Places.to(Places.WALKS) + "/area")))));
        if (!facts.isEmpty()) {
            blocks.add(new Block.Facts(facts, origin));
        }
        entry.thresholds().stream().filter(threshold -> usedBy(threshold, look))
                .forEach(threshold -> blocks.addAll(plan(threshold)));
        return blocks;
    }

    /** The plan for stopping early, with what belongs to it. */
    private List<Block> plan(Threshold threshold) {
        Optional<StopTable> table = threshold.stopEarly().flatMap(EarlyStop::plan)
                .flatMap(SequentialPlan::table);
        if (table.isEmpty()) {
            return List.of();
        }
        EarlyStop stop = threshold.stopEarly().get();
        Span origin = placed.at("thresholds", entry.thresholds().indexOf(threshold), "stop-early");
        List<Block> blocks = new ArrayList<>();
        blocks.add(new StopTables(reader.phrases()).page(threshold, table.get(),
                threshold.counted().orElse(entry.names().common()), origin));
        Line line = Line.of().plain(reader.say("plan.promise", Math.round(stop.alpha() * 100),
                Math.round(stop.beta() * 100), Figures.plain(stop.letBe()), Figures.plain(stop.act()),
                reader.say(stop.countsUnitsWithPest() ? "plan.percent" : "plan.each")));
        stop.note().ifPresent(note -> line.sentence(reader.read(note)));
        blocks.add(new Block.Paragraph(line.plain(" ").add(register.brief(stop.source())).plain(".").runs(),
                List.of(), origin));
        return blocks;
    }

    private List<Block> worth(Threshold threshold) {
        Span origin = placed.at("thresholds", entry.thresholds().indexOf(threshold), "injury-level");
        PriceTables prices = new PriceTables(register.base(), entry, reader.phrases());
        List<Block> blocks = new ArrayList<>(prices.explained(threshold, register, origin));
        blocks.addAll(prices.of(threshold, origin));
        return blocks;
    }

    private boolean usedBy(Threshold threshold, Monitoring look) {
        return entry.monitoringOf(threshold, audience(threshold)).filter(look::equals).isPresent();
    }

    /** The readers whose card is printed: the first that a threshold names, or field growers. */
    static Audience audience(Threshold threshold) {
        return threshold.mainAudience();
    }

    private CountWriter cards(Threshold threshold) {
        return new CountWriter(register.base(), placed,
                new Reader(audience(threshold), List.of(), false, register.phrases()));
    }

    /** Every published number, as it was published, and what it comes to on the card's sample. */
    private Optional<Block> numbers() {
        List<List<List<Run>>> rows = new ArrayList<>();
        for (Threshold threshold : entry.thresholds()) {
            if (threshold.metric() == Metric.NONE || threshold.metric() == Metric.INTERVAL_TABLE) {
                continue;
            }
            rows.add(List.of(disagrees(threshold) ? List.of(Run.strong(published.words(threshold) + "."))
                    : number(threshold), published.where(threshold, reader), published.onCard(threshold),
                    register.brief(threshold.source())));
        }
        return rows.isEmpty() ? Optional.empty()
                : Optional.of(new Block.Grid(reader.say("book.numbers"), List.of(
                head("book.numbers.published"), head("book.numbers.where"), head("book.numbers.card"),
                head("book.numbers.source")), rows, placed.at("thresholds")));
    }

    private List<Run> number(Threshold threshold) {
        Line line = Line.of().strong(published.words(threshold) + ".");
        threshold.note().ifPresent(note -> line.sentence(reader.read(note)));
        return line.runs();
    }

    /** Sources that answer one question differently stand in columns beside each other. */
    private List<Block> disagreements() {
        List<Block> blocks = new ArrayList<>();
        Set<Threshold> done = new LinkedHashSet<>();
        for (Threshold first : entry.thresholds()) {
            List<Threshold> same = sameQuestion(first);
            if (disagrees(first) && done.add(first)) {
                done.addAll(same);
                blocks.add(new Block.Grid(reader.say("book.disagree", first.counted().orElse("")),
                        same.stream().map(one -> register.brief(one.source())).toList(),
                        List.of(same.stream().map(this::number).toList()),
                        placed.at("thresholds", entry.thresholds().indexOf(first))));
            }
        }
        return blocks;
    }

    private List<Threshold> sameQuestion(Threshold first) {
        return entry.thresholds().stream().filter(other -> other == first || other.asksTheSameAs(first))
                .toList();
    }

    private boolean disagrees(Threshold threshold) {
        return sameQuestion(threshold).stream().map(Threshold::value).distinct().count() > 1;
    }

    private Optional<Block> events() {
        Measures in = reader.phrases().measures();
        List<List<List<Run>>> rows = new ArrayList<>();
        for (Monitoring look : entry.monitoring()) {
            for (DegreeDayEvent event : look.season().map(season -> season.events()).orElse(List.of())) {
                String base = reader.say("book.warmth.above", in.temperature(event.lower(),
                        event.unit().scale())) + event.upper().map(upper -> reader.say("book.warmth.upper",
                        in.temperature(upper, event.unit().scale()))).orElse("");
                String from = event.start().map(day -> register.phrases().day(day)).or(event::biofix)
                        .orElse("–");
                rows.add(List.of(List.of(Run.strong(event.event())),
                        List.of(Run.strong(in.sum(event.sum(), event.unit().scale()))),
                        List.of(Run.plain(base)), List.of(Run.plain(from)), register.brief(event.source())));
            }
        }
        return rows.isEmpty() ? Optional.empty()
                : Optional.of(new Block.Grid(reader.say("book.warmth"), List.of(
                head("book.warmth.event"), head("book.warmth.degree-days"), head("book.warmth.base"),
                head("book.warmth.from"), head("book.numbers.source")), rows, placed.at("monitoring")));
    }

    private List<Run> head(String key) {
        return List.of(Run.strong(reader.say(key)));
    }
}
