package org.fieldfold.edition;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.TemporalAccessor;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Keys;
import org.fieldfold.entry.Placed;
import org.fieldfold.prose.Prose;
import org.fieldfold.report.Sha256;
import org.fieldfold.scouting.degreeday.TemperatureRecord;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;
import org.fieldfold.source.Spans;

/**
 * Turns records into facts, component by component, so that a new component of a record joins by itself.
 * Places in files fall away, and so does everything that is absent.
 */
final class FactForm {
    private FactForm() {
    }

    /** The facts of a value; empty when it holds none. */
    static Optional<Fact> of(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.flatMap(FactForm::of);
        }
        if (value instanceof Placed<?> placed) {
            return of(placed.value());
        }
        if (value instanceof Span || value instanceof Spans || value instanceof SourceFile) {
            return Optional.empty();
        }
        if (value instanceof Prose prose) {
            return text(ProseForm.of(prose));
        }
        if (value instanceof Figure figure) {
            return Optional.of(figure(figure));
        }
        if (value instanceof TemperatureRecord temperatures) {
            return temperatures(temperatures);
        }
        if (value instanceof Record facts) {
            return record(facts);
        }
        if (value instanceof Collection<?> list) {
            List<Fact> items = new ArrayList<>();
            list.forEach(item -> of(item).ifPresent(items::add));
            return items.isEmpty() ? Optional.empty() : Optional.of(new Fact.Items(items));
        }
        if (value instanceof Map<?, ?> map) {
            SortedMap<String, Fact> facts = new TreeMap<>();
            map.forEach((key, item) -> of(item).ifPresent(fact -> facts.put(key(key), fact)));
            return facts.isEmpty() ? Optional.empty() : Optional.of(new Fact.Group(facts));
        }
        return text(single(value));
    }

    private static Optional<Fact> text(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(new Fact.Word(text));
    }

    private static String single(Object value) {
        if (value instanceof Enum<?> word) {
            return Keys.word(word);
        }
        if (value instanceof Integer || value instanceof Long || value instanceof Boolean) {
            return value.toString();
        }
        if (value instanceof Double number) {
            return Double.isFinite(number) ? BigDecimal.valueOf(number).stripTrailingZeros().toPlainString()
                    : number.toString();
        }
        if (value instanceof MonthDay day) {
            return day.toString().substring(2);
        }
        if (value instanceof TemporalAccessor) {
            return value.toString();
        }
        if (value instanceof String words) {
            return ProseForm.spaced(words);
        }
        if (value instanceof byte[] bytes) {
            return Sha256.of(bytes);
        }
        throw new IllegalArgumentException("no form for the facts of a " + value.getClass().getName());
    }

    private static String key(Object key) {
        return key instanceof Enum<?> word ? Keys.word(word) : String.valueOf(key);
    }

    private static Optional<Fact> record(Record facts) {
        SortedMap<String, Fact> group = new TreeMap<>();
        if (facts instanceof Control control) {
            group.put("tier", Fact.word(control.tier()));
        }
        for (RecordComponent component : Keys.components(facts)) {
            of(Keys.value(facts, component)).ifPresent(fact ->
                    group.put(Keys.of(component), fact));
        }
        return group.isEmpty() ? Optional.empty() : Optional.of(new Fact.Group(group));
    }

    /** Those of a record that stand under these keys. */
    static Fact.Group of(Record facts, List<String> keys) {
        SortedMap<String, Fact> group = new TreeMap<>();
        for (RecordComponent component : Keys.components(facts)) {
            String key = Keys.of(component);
            if (keys.contains(key)) {
                of(Keys.value(facts, component)).ifPresent(fact -> group.put(key, fact));
            }
        }
        return new Fact.Group(group);
    }

    /** A figure's file is known by its bytes, not by its name; a drawing is text, whatever ends its lines. */
    private static Fact figure(Figure figure) {
        byte[] bytes = figure.drawn()
                ? new String(figure.bytes(), StandardCharsets.UTF_8).replace("\r\n", "\n")
                        .replace("\uFEFF", "").getBytes(StandardCharsets.UTF_8)
                : figure.bytes();
        SortedMap<String, Fact> facts = new TreeMap<>();
        if (of(figure.note()).orElseThrow() instanceof Fact.Group note) {
            facts.putAll(note.facts());
        }
        facts.put("image", Fact.word(Arrays.equals(bytes, figure.bytes()) ? figure.sha256() : Sha256.of(bytes)));
        return new Fact.Group(facts);
    }

    /** Many thousand days are known by their first and last, and a hash of all. */
    private static Optional<Fact> temperatures(TemperatureRecord record) {
        if (record.first().isEmpty() || record.last().isEmpty()) {
            return Optional.empty();
        }
        StringBuilder days = new StringBuilder();
        LocalDate last = record.last().get();
        for (LocalDate day = record.first().get(); !day.isAfter(last); day = day.plusDays(1)) {
            if (record.isWritten(day)) {
                record.day(day).ifPresent(one -> days.append(one.date()).append(',')
                        .append(single(one.min())).append(',').append(single(one.max())).append('\n'));
            }
        }
        return Optional.of(Fact.group("first", Fact.word(record.first().get()), "last", Fact.word(last),
                "unit", Fact.word(Keys.word(record.unit())), "days-sha256",
                Fact.word(Sha256.of(days.toString().getBytes(StandardCharsets.UTF_8)))));
    }
}
