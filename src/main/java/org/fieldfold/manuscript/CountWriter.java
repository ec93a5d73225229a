package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.DegreeDayEvent;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.SamplingUnit;
import org.fieldfold.entry.Threshold;
import org.fieldfold.entry.ThresholdStep;
import org.fieldfold.prose.Run;
import org.fieldfold.scouting.CountCard;
import org.fieldfold.scouting.Metric;
import org.fieldfold.scouting.Walk;
import org.fieldfold.source.Span;

/**
 * Writes how to count and when it pays to act. Numbers come from {@code scouting}; nothing is computed here.
 */
final class CountWriter {
    private final ContentBase base;
    private final Placed<PestEntry> placed;
    private final PestEntry entry;
    private final Reader reader;

    CountWriter(ContentBase base, Placed<PestEntry> placed, Reader reader) {
        this.base = base;
        this.placed = placed;
        this.entry = placed.value();
        this.reader = reader;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>(numbers());
        List<Threshold> counted = counted();
        for (int i = 0; i < counted.size(); i++) {
            blocks.addAll(i == 0 ? 1 : blocks.size(), stops(counted.get(i)));
        }
        howTo(counted).ifPresent(blocks::add);
        blocks.addAll(uncounted());
        blocks.addAll(prices());
        events().ifPresent(blocks::add);
        blocks.addAll(heat());
        return blocks;
    }

    /** How to look for it, where nothing is counted. */
    Optional<Block> howTo() {
        return howTo(counted());
    }

    /** What decides instead of a count. */
    private List<Block> uncounted() {
        List<Threshold> all = entry.thresholds().stream().filter(reader::concerns).toList();
        List<Block> blocks = new ArrayList<>();
        for (Threshold threshold : reader.pocket() ? leading(all) : all) {
            if (!hasCard(threshold)) {
                blocks.addAll(uncounted(threshold));
            }
        }
        return blocks;
    }

    /** Why no count decides; nothing where a table or a share does. */
    Optional<Block> noCount() {
        return entry.thresholds().stream().filter(reader::concerns)
                .filter(threshold -> threshold.metric() == Metric.NONE).findFirst()
                .flatMap(threshold -> uncounted(threshold).stream().findFirst());
    }

    /** The least catch of a table by which one acts, and what follows from it; empty where there is no table. */
    Optional<List<Run>> leastCatch() {
        return entry.thresholds().stream().filter(reader::concerns)
                .filter(threshold -> threshold.metric() == Metric.INTERVAL_TABLE && !threshold.steps().isEmpty())
                .findFirst().map(threshold -> {
                    ThresholdStep least = threshold.steps().get(0);
                    return Line.of().strong(Phrases.capital(threshold.when().map(when -> when + ", ").orElse("")
                            + range(least) + " " + threshold.counted().orElse(reader.say("table.catch"))) + ":")
                            .plain(" ").add(reader.read(least.act())).plain(".").runs();
                });
    }

    /** The count card, and the other counts behind it; none where nothing is counted. */
    List<Block> numbers() {
        List<Threshold> counted = counted();
        List<Block> blocks = new ArrayList<>();
        if (!counted.isEmpty()) {
            blocks.add(box(counted.get(0)));
            if (counted.size() > 1) {
                blocks.addAll(others(counted.get(0), counted.subList(1, counted.size())));
            }
        }
        return blocks;
    }

    private List<Threshold> counted() {
        return leading(entry.thresholds().stream().filter(reader::concerns).filter(this::hasCard).toList());
    }

    /** The plan by which a count may stop early; none where there is none. */
    List<Block> stops(Threshold threshold) {
        String counted = threshold.counted().orElse(entry.names().common());
        return new StopTables(reader.phrases()).of(threshold, counted, at(threshold, "stop-early"));
    }

    private List<Block> prices() {
        PriceTables tables = new PriceTables(base, entry, reader.phrases());
        return entry.thresholds().stream().filter(reader::concerns).flatMap(threshold ->
                tables.of(threshold, at(threshold, "injury-level")).stream()).toList();
    }

    private List<Block> heat() {
        List<DegreeDayEvent> events = entry.monitoringFor(reader.audience()).stream()
                .flatMap(look -> look.season().stream()).flatMap(season -> season.events().stream()).toList();
        return new HeatTables(reader.phrases()).of(events, placed.at("monitoring"));
    }

    boolean hasCard(Threshold threshold) {
        return entry.cardOf(threshold, reader.audience()).isPresent();
    }

    /** Where sources disagree on one question the pocket prints the figure that the entry lists first. */
    private List<Threshold> leading(List<Threshold> thresholds) {
        List<Threshold> kept = new ArrayList<>();
        for (Threshold threshold : thresholds) {
            if (!reader.pocket() || kept.stream().noneMatch(earlier -> earlier.asksTheSameAs(threshold))) {
                kept.add(threshold);
            }
        }
        return kept;
    }

    Block.CountBox box(Threshold threshold) {
        CountCard card = entry.cardOf(threshold, reader.audience()).orElseThrow();
        Monitoring look = entry.monitoringOf(threshold, reader.audience()).orElseThrow();
        Line line = Line.of().strong(reader.say("count") + " ").plain(what(threshold, card, look));
        line.plain(": " + where(card, look));
        look.everyDays()
                .ifPresent(days -> line.plain(", " + reader.phrases().count("count.every", days, days)));
        threshold.when().ifPresent(when -> line.plain(", " + when));
        line.plain(".");
        threshold.note().ifPresent(note -> line.sentence(reader.read(note)));
        int boxes = card.stops() > 1 && card.stops() <= 12 ? card.stops() : 0;
        return new Block.CountBox(line.runs(), reader.say("act-at"), String.valueOf(card.actAt()),
                below(threshold, card), boxes, entry.id() + "/" + threshold.id(), at(threshold, "value"));
    }

    private String what(Threshold threshold, CountCard card, Monitoring look) {
        String counted = threshold.counted().orElse(entry.names().common());
        String units = unit(look.unit(), card.lookAt());
        if (card.countsUnitsWithPest()) {
            return reader.say("count.among", counted, card.lookAt());
        }
        return reader.say(look.unit() == SamplingUnit.TRAP ? "count.in" : "count.on", counted,
                card.lookAt(), units);
    }

    private String where(CountCard card, Monitoring look) {
        Walk walk = look.walk().orElse(Walk.ROWS);
        if (look.unit() == SamplingUnit.TRAP || walk == Walk.BED || card.stops() == 1) {
            return method(look);
        }
        return reader.say("count.stops." + walk.name().toLowerCase(Locale.ROOT), card.stops(), card.each(),
                unit(look.unit(), card.each()));
    }

    private String method(Monitoring look) {
        return reader.phrases().word("method", look.method());
    }

    private String unit(SamplingUnit unit, int count) {
        return reader.phrases()
                .count("unit." + unit.name().toLowerCase(Locale.ROOT).replace('_', '-'), count);
    }

    private String below(Threshold threshold, CountCard card) {
        String counted = threshold.counted().orElse(entry.names().common());
        if (threshold.metric() == Metric.ANY_PRESENT) {
            return reader.say("count.or-more", counted);
        }
        return card.days() == 0 ? counted
                : reader.phrases().count("count.in-days", card.days(), counted, card.days());
    }

    /** The other counts: a sentence for one or two that hold at any time, a table where the stage decides. */
    private List<Block> others(Threshold boxed, List<Threshold> others) {
        boolean byStage = others.stream().anyMatch(threshold -> threshold.when().isPresent());
        if (!byStage) {
            Line line = Line.of();
            for (Threshold threshold : others) {
                line.plain(line.isEmpty() ? reader.say("count.or") + " " : ", " + reader.say("or") + " ");
                line.strong(actAt(threshold)).plain(" " + found(boxed, threshold));
            }
            return List.of(new Block.Paragraph(line.plain(".").runs(), List.of(), at(others.get(0))));
        }
        List<List<List<Run>>> rows = new ArrayList<>();
        for (Threshold threshold : others) {
            String when = threshold.when().orElse("");
            String counted = found(boxed, threshold);
            rows.add(List.of(List.of(Run.plain(when.isEmpty() ? counted : when)),
                    Line.of().strong(actAt(threshold)).plain(when.isEmpty() ? "" : " " + counted).runs()));
        }
        return List.of(new Block.Grid(reader.say("table.others"), List.of(
                List.of(Run.strong(reader.say("table.when"))), List.of(Run.strong(reader.say("table.act")))),
                rows, at(others.get(0))));
    }

    /** What the number counts; with how many units where they are not those of the box above. */
    private String found(Threshold boxed, Threshold threshold) {
        CountCard card = entry.cardOf(threshold, reader.audience()).orElseThrow();
        Monitoring look = entry.monitoringOf(threshold, reader.audience()).orElseThrow();
        if (entry.monitoringOf(boxed, reader.audience()).equals(Optional.of(look))) {
            return threshold.counted().orElse("");
        }
        String counted = what(threshold, card, look);
        return card.days() == 0 ? counted
                : reader.phrases().count("count.in-days", card.days(), counted, card.days());
    }

    private String actAt(Threshold threshold) {
        CountCard card = entry.cardOf(threshold, reader.audience()).orElseThrow();
        return String.valueOf(card.actAt());
    }

    private Optional<Block> howTo(List<Threshold> counted) {
        Optional<Monitoring> look = counted.isEmpty()
                ? entry.monitoringFor(reader.audience()).stream().findFirst()
                : entry.monitoringOf(counted.get(0), reader.audience());
        return look.map(how -> new Block.Paragraph(reader.read(how.how()), List.of(),
                placed.at("monitoring", entry.monitoring().indexOf(how), "how")));
    }

    List<Block> uncounted(Threshold threshold) {
        Span origin = at(threshold);
        if (threshold.metric() == Metric.NONE) {
            Line line = Line.of().strong(reader.say("no-count"));
            threshold.reason().ifPresent(reason -> line.sentence(reader.read(reason)));
            return List.of(new Block.Paragraph(line.runs(), List.of(), origin));
        }
        if (threshold.metric() == Metric.INTERVAL_TABLE) {
            List<List<List<Run>>> rows = new ArrayList<>();
            for (ThresholdStep step : threshold.steps()) {
                rows.add(List.of(List.of(Run.plain(range(step))), reader.read(step.act())));
            }
            String caught = threshold.counted().orElse(reader.say("table.catch"));
            return List.of(new Block.Grid(threshold.when().orElse(reader.say("table.others")), List.of(
                    List.of(Run.strong(caught)), List.of(Run.strong(reader.say("table.do")))), rows, origin));
        }
        if (threshold.metric() == Metric.DEFOLIATION && threshold.value().isPresent()) {
            Line line = Line.of()
                    .strong(reader.say("count.leaf-loss", Figures.plain(threshold.value().get())));
            threshold.when().ifPresent(when -> line.plain(" " + when));
            line.plain(".");
            threshold.note().ifPresent(note -> line.sentence(reader.read(note)));
            return List.of(new Block.Paragraph(line.runs(), List.of(), origin));
        }
        return threshold.note().<List<Block>>map(note -> List.of(
                new Block.Paragraph(reader.read(note), List.of(), origin))).orElse(List.of());
    }

    private String range(ThresholdStep step) {
        return step.to().map(to -> Figures.range(step.from(), to))
                .orElse(reader.say("range.over", Figures.plain(step.from())));
    }

    private Optional<Block> events() {
        Measures in = reader.phrases().measures();
        Line line = Line.of();
        Span origin = null;
        for (Monitoring look : entry.monitoringFor(reader.audience())) {
            for (DegreeDayEvent event : look.season().map(season -> season.events()).orElse(List.of())) {
                origin = Objects.requireNonNullElse(origin,
                        placed.at("monitoring", entry.monitoring().indexOf(look), "season"));
                String from = event.start().map(day -> reader.phrases().day(day)).or(event::biofix)
                        .orElse("");
                line.sentence(Line.of().strong(Phrases.capital(event.event()))
                        .plain(reader.say("degree-days", in.sumAlone(event.sum(), event.unit().scale()),
                                in.lower(event.sum(), event.lower(), event.unit().scale()), from))
                        .runs());
            }
        }
        return line.isEmpty() ? Optional.empty()
                : Optional.of(new Block.Paragraph(line.runs(), List.of(), origin));
    }

    private Span at(Threshold threshold, Object... more) {
        Object[] path = new Object[2 + more.length];
        path[0] = "thresholds";
        path[1] = entry.thresholds().indexOf(threshold);
        System.arraycopy(more, 0, path, 2, more.length);
        return placed.at(path);
    }
}
