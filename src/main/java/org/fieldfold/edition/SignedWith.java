package org.fieldfold.edition;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.InjuryTerms;
import org.fieldfold.entry.NaturalEnemy;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Reviewed;

/**
 * What stands with an entry on paper but in records of its own: the materials of its third tier with their waiting
 * times and warnings, the prices behind its thresholds, its drawings. A signature covers them as they were that day.
 * A day on which a label or a price was looked at, a source and a credit are no part of it, nor is a use that a
 * material lost on another crop.
 */
public final class SignedWith {
    /** 32 bits each: enough to notice an edit, not to stop somebody who wants to deceive. */
    private static final int DIGITS = 8;
    private static final List<String> NOT_PRINTED = List.of("sources", "source", "as-of", "release", "credit",
            "licence");

    /** One record: its kind as in a snapshot, and its id. */
    private record Thing(String kind, String id) implements Comparable<Thing> {
        /** As it is written in an entry's file. */
        String word() {
            return (kind.equals("materials") ? "" : kind.equals("prices") ? "price " : "drawing ") + id;
        }

        @Override
        public int compareTo(Thing other) {
            return word().compareTo(other.word());
        }
    }

    private final Reviewed entry;
    private final ContentBase base;

    private SignedWith(Reviewed entry, ContentBase base) {
        this.entry = entry;
        this.base = base;
    }

    /** The names and hashes as they are now, as in {@code soap 0a1b2c3d, spinosad 4e5f6a7b}; empty without any. */
    public static Optional<String> of(Reviewed entry, ContentBase base) {
        SignedWith with = new SignedWith(entry, base);
        String words = with.now().entrySet().stream()
                .map(thing -> thing.getKey().word() + " " + hash(with.printed(thing.getValue().facts())))
                .collect(Collectors.joining(", "));
        return words.isEmpty() ? Optional.empty() : Optional.of(words);
    }

    /** Whether one of them is not as it was signed; never for an entry that was signed by hand. */
    public static boolean changed(Reviewed entry, ContentBase base) {
        SignedWith with = new SignedWith(entry, base);
        return with.isSigned() && !with.changed(with.now()).isEmpty();
    }

    /**
     * Which of them are not as they were signed, each in a sentence; in what they differ where the last edition
     * printed them as they were signed.
     */
    public static List<String> changes(Reviewed entry, ContentBase base, Optional<Ledger> last) {
        SignedWith with = new SignedWith(entry, base);
        if (!with.isSigned()) {
            return List.of();
        }
        SortedMap<Thing, Snapshot.Known> now = with.now();
        List<String> sentences = new ArrayList<>();
        with.changed(now).forEach((thing, signed) -> {
            Optional<Snapshot.Known> was = last.flatMap(ledger -> ledger.facts().get(thing.kind(), thing.id()))
                    .filter(known -> hash(with.printed(known.facts())).equals(signed));
            Optional<Snapshot.Known> is = Optional.ofNullable(now.get(thing));
            List<String> facts = was.isPresent() && is.isPresent() ? with.differences(thing, was.get(), is.get())
                    : List.of();
            sentences.addAll(facts.isEmpty() ? List.of(thing.word()) : facts);
        });
        return sentences;
    }

    /** In what they differ from an issued edition that knew them, each in a sentence. */
    public static List<String> since(Reviewed entry, ContentBase base, Ledger last) {
        SignedWith with = new SignedWith(entry, base);
        List<String> sentences = new ArrayList<>();
        with.now().forEach((thing, is) -> last.facts().get(thing.kind(), thing.id())
                .ifPresent(was -> sentences.addAll(with.differences(thing, was, is))));
        return sentences;
    }

    private List<String> differences(Thing thing, Snapshot.Known was, Snapshot.Known is) {
        return Comparison.of("", alone(thing, was), "", alone(thing, is)).changes().stream()
                .map(Change::sentence).toList();
    }

    private Snapshot alone(Thing thing, Snapshot.Known known) {
        return new Snapshot(new TreeMap<>(Map.of(thing.kind(), new TreeMap<>(Map.of(thing.id(),
                new Snapshot.Known(printed(known.facts()), Fact.group()))))));
    }

    private boolean isSigned() {
        return entry.signedFacts().isPresent() && entry.signedWith().isPresent();
    }

    /** The things that changed, with the hash that was signed; empty for one that joined since. */
    private SortedMap<Thing, String> changed(SortedMap<Thing, Snapshot.Known> now) {
        SortedMap<Thing, String> changed = new TreeMap<>();
        Map<String, String> signed = signed();
        now.forEach((thing, known) -> {
            String was = signed.getOrDefault(thing.word(), "");
            if (!hash(printed(known.facts())).equals(was)) {
                changed.put(thing, was);
            }
        });
        return changed;
    }

    private Map<String, String> signed() {
        Map<String, String> hashes = new LinkedHashMap<>();
        for (String thing : entry.signedWith().orElse("").split(",")) {
            int blank = thing.strip().lastIndexOf(' ');
            if (blank > 0) {
                hashes.put(thing.strip().substring(0, blank), thing.strip().substring(blank + 1));
            }
        }
        return hashes;
    }

    private SortedMap<Thing, Snapshot.Known> now() {
        SortedMap<Thing, Snapshot.Known> things = new TreeMap<>();
        if (entry instanceof PestEntry pest) {
            pest.controls().stream().filter(Control.Insecticide.class::isInstance)
                    .map(control -> ((Control.Insecticide) control).material())
                    .forEach(id -> put(things, "materials", id, Optional.ofNullable(base.materials().get(id))));
            pest.thresholds().stream().flatMap(threshold -> threshold.injuryLevel().stream())
                    .flatMap(terms -> prices(terms).stream())
                    .forEach(id -> put(things, "prices", id, Optional.ofNullable(base.prices().get(id))));
        }
        figures().forEach(figure -> put(things, "figures", figure.id(),
                Optional.ofNullable(base.figures().get(figure.id()))));
        return things;
    }

    private static TreeSet<String> prices(InjuryTerms terms) {
        return new TreeSet<>(List.of(terms.cost(), terms.value()));
    }

    private List<Figure> figures() {
        if (entry instanceof PestEntry pest) {
            return base.figuresOf(pest.id(), pest.figures(), pest.stages());
        }
        return entry instanceof NaturalEnemy enemy
                ? base.figuresOf(enemy.id(), enemy.figures(), enemy.stages()) : List.of();
    }

    private static void put(Map<Thing, Snapshot.Known> things, String kind, String id, Optional<Placed<?>> placed) {
        placed.flatMap(Snapshot::known).ifPresent(known -> things.put(new Thing(kind, id), known));
    }

    /** What a reader sees of it beside this entry. */
    private Fact.Group printed(Fact.Group facts) {
        Fact.Group shown = facts;
        for (String key : NOT_PRINTED) {
            shown = shown.without(key);
        }
        if (entry instanceof PestEntry pest && shown.get("lost-uses").isPresent()) {
            List<Fact> here = shown.items("lost-uses").stream()
                    .filter(crop -> pest.crops().stream().anyMatch(own -> crop.equals(Fact.word(own)))).toList();
            SortedMap<String, Fact> rest = new TreeMap<>(shown.without("lost-uses").facts());
            if (!here.isEmpty()) {
                rest.put("lost-uses", new Fact.Items(here));
            }
            shown = new Fact.Group(rest);
        }
        return shown;
    }

    private static String hash(Fact.Group facts) {
        return facts.sha256().substring(0, DIGITS);
    }
}
