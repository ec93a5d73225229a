package org.fieldfold.edition;

import java.lang.reflect.RecordComponent;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Keys;

/**
 * All facts of a content base at one time: as it is now, or as a ledger keeps it.
 *
 * @param records by kind, as in {@code pests}, and id
 */
public record Snapshot(SortedMap<String, SortedMap<String, Known>> records) {
    /** Facts that say who re-read a record and when, and so change every winter without anything changing. */
    private static final List<String> SIGNED = List.of("revised", "reviser", "carried-over", "signed-facts",
            "signed-with",
            "label-checked");

    /**
     * One record.
     *
     * @param facts what it says
     * @param signature who stands behind it since when
     */
    public record Known(Fact.Group facts, Fact.Group signature) {
    }

    public Snapshot {
        SortedMap<String, SortedMap<String, Known>> copy = new TreeMap<>();
        records.forEach((kind, byId) -> copy.put(kind, Collections.unmodifiableSortedMap(
                new TreeMap<>(byId))));
        records = Collections.unmodifiableSortedMap(copy);
    }

    /** Finds out what is known of a record. */
    interface Knowing {
        /** @param find the record in a base */
        Optional<Known> of(String kind, String id, Function<ContentBase, Object> find);
    }

    /** The facts of a base as it was read. */
    public static Snapshot of(ContentBase base) {
        return of(base, (kind, id, find) -> known(find.apply(base)));
    }

    /** @param knowing is asked for every record */
    static Snapshot of(ContentBase base, Knowing knowing) {
        SortedMap<String, SortedMap<String, Known>> records = new TreeMap<>();
        for (RecordComponent component : Keys.components(base)) {
            String kind = Keys.of(component);
            SortedMap<String, Known> byId = new TreeMap<>();
            if (Keys.value(base, component) instanceof Map<?, ?> map) {
                map.keySet().forEach(id -> knowing.of(kind, (String) id, from ->
                        ((Map<?, ?>) Keys.value(from, component)).get(id)).ifPresent(known ->
                        byId.put((String) id, known)));
            } else {
                knowing.of(kind, "", from -> Keys.value(from, component)).ifPresent(known ->
                        byId.put(kind, known));
            }
            if (!byId.isEmpty()) {
                records.put(kind, byId);
            }
        }
        return new Snapshot(records);
    }

    static Optional<Known> known(Object record) {
        return FactForm.of(record).filter(Fact.Group.class::isInstance).map(fact -> split((Fact.Group) fact));
    }

    private static Known split(Fact.Group facts) {
        SortedMap<String, Fact> said = new TreeMap<>(facts.facts());
        SortedMap<String, Fact> signed = new TreeMap<>();
        for (String key : SIGNED) {
            Optional.ofNullable(said.remove(key)).ifPresent(fact -> signed.put(key, fact));
        }
        return new Known(new Fact.Group(said), new Fact.Group(signed));
    }

    /** A record; empty when it is not known. */
    public Optional<Known> get(String kind, String id) {
        return Optional.ofNullable(records.get(kind)).map(byId -> byId.get(id));
    }

    /** What an id is called: a name or a title, or the id itself. */
    public String name(String kind, String id) {
        return get(kind, id).map(Known::facts).flatMap(facts -> facts.group("names").word("common")
                .or(() -> facts.word("name")).or(() -> facts.word("title"))).orElse(id);
    }

    /** Who signed how many entries, as in {@code 56 entries: avery 40, imre 16}. */
    public String signatures() {
        SortedMap<String, Integer> bySigner = new TreeMap<>();
        records.values().forEach(byId -> byId.values().forEach(known ->
                known.signature().word("reviser").ifPresent(name -> bySigner.merge(name, 1, Integer::sum))));
        int all = bySigner.values().stream().mapToInt(Integer::intValue).sum();
        return all + (all == 1 ? " entry" : " entries") + " signed" + (all == 0 ? "" : ": "
                + bySigner.entrySet().stream().map(signer -> signer.getKey() + " " + signer.getValue())
                        .collect(Collectors.joining(", ")));
    }
}
