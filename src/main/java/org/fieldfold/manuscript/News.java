package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.fieldfold.edition.Change;
import org.fieldfold.edition.ChangeGroup;
import org.fieldfold.edition.Comparison;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.prose.Run;

/**
 * What is new this year, as growers are told: counts, materials and cautions first, each in a few words, and
 * nothing about wording. Where a number alone could mislead, it says only that something changed and where to
 * read it.
 */
public final class News {
    /** Of an edition with none before it. */
    public static final News NONE = new News(List.of());

    /**
     * One line.
     *
     * @param entry id of the pest it is about; empty for all of them
     */
    record Item(String entry, List<Run> runs) {
    }

    private final List<Change> changes;

    private News(List<Change> changes) {
        this.changes = changes;
    }

    /** @param comparison with the last edition; empty when there was none */
    public static News of(Optional<Comparison> comparison) {
        return comparison.map(known -> new News(known.changes())).orElse(NONE);
    }

    /** All that lines about these entries are made of, besides the base. */
    public String about(Collection<String> entries) {
        return changes.stream().filter(change -> change.kind().equals("pests") && entries.contains(change.id())
                || change.kind().equals("materials")
                || change.kind().equals("edition") && change.group() == ChangeGroup.CAUTIONS).toList().toString();
    }

    /** The lines about some entries, the most urgent first. */
    List<Item> lines(ContentBase base, Phrases phrases, Predicate<String> entries) {
        List<Item> lines = new ArrayList<>();
        for (Change change : changes) {
            line(change, base, phrases, entries).filter(line -> !lines.contains(line)).ifPresent(lines::add);
        }
        return lines;
    }

    private static Optional<Item> line(Change change, ContentBase base, Phrases phrases,
            Predicate<String> entries) {
        if (change.kind().equals("pests") && entries.test(change.id())
                && base.pests().containsKey(change.id())) {
            String name = Phrases.capital(base.pests().get(change.id()).value().names().common());
            return ofPest(change, name, base, phrases).map(words -> item(change.id(), name, words));
        }
        if (change.kind().equals("materials") && isUsed(change.id(), base, entries)) {
            String name = Phrases.capital(material(change.id(), base));
            boolean withdrawn = change.parts().stream().anyMatch(part -> part.what().startsWith("withdrawn"));
            return Optional.of(item("", name, phrases.say(withdrawn ? "news.withdrawn" : "news.label")));
        }
        if (change.kind().equals("edition") && change.group() == ChangeGroup.CAUTIONS) {
            return Optional.of(item("", phrases.say("cautions"), phrases.say("news.cautions")));
        }
        return Optional.empty();
    }

    private static Item item(String entry, String name, String words) {
        return new Item(entry, Line.of().strong(name).plain(": " + words).runs());
    }

    private static Optional<String> ofPest(Change change, String name, ContentBase base, Phrases phrases) {
        return switch (change.group()) {
            case ENTRIES -> Optional.of(phrases.say("news.entry"));
            case THRESHOLDS -> Optional.of(change.parts().stream().filter(News::isNumber).findFirst()
                    .map(part -> phrases.say("news.count", part.after().orElse(""), part.before().orElse("")))
                    .orElse(phrases.say("news.counts")));
            case MATERIALS -> Optional.of(material(change, base, phrases));
            case CAUTIONS -> Optional.of(phrases.say("news.cautions"));
            case MONITORING -> Optional.of(phrases.say("news.monitoring"));
            case MEASURES -> Optional.of(phrases.say("news.measures"));
            case IDENTIFICATION, OTHER, WORDING -> Optional.empty();
        };
    }

    /** The count itself, a number on either side of one unit. */
    private static boolean isNumber(Change.Part part) {
        return part.what().isEmpty() && part.before().isPresent() && part.after().isPresent()
                && !part.unit().isEmpty();
    }

    private static String material(Change change, ContentBase base, Phrases phrases) {
        String name = material(change.item(), base);
        Optional<Change.Part> whole = change.parts().stream().filter(part -> part.what().isEmpty()
                && part.before().isPresent() != part.after().isPresent()).findFirst();
        return whole.map(part -> phrases.say(part.after().isPresent() ? "news.material.new"
                : "news.material.gone", name)).orElse(phrases.say("news.material.changed", name));
    }

    private static String material(String id, ContentBase base) {
        return Optional.ofNullable(base.materials().get(id)).map(material -> material.value().name())
                .orElse(id);
    }

    private static boolean isUsed(String material, ContentBase base, Predicate<String> entries) {
        return base.pests().keySet().stream().filter(entries)
                .map(id -> base.pests().get(id).value().controls()).flatMap(List::stream)
                .anyMatch(control -> control instanceof Control.Insecticide use
                        && use.material().equals(material));
    }
}
