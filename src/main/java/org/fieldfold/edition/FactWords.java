package org.fieldfold.edition;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Says facts in words, with names in place of ids. A key that nobody has words for is said as it is. */
final class FactWords {
    private static final int LONGEST = 100;

    /** What a key is called, and the unit behind its value. */
    private record Said(String words, String unit) {
    }

    private static final Map<String, Said> KEYS = Map.ofEntries(
            Map.entry("phi-days", new Said("pre-harvest interval", "days")),
            Map.entry("rei-hours", new Said("restricted-entry interval", "hours")),
            Map.entry("size", new Said("size", "mm")),
            Map.entry("true-size", new Said("true size", "mm")),
            Map.entry("every-days", new Said("looked at every", "days")),
            Map.entry("bees", new Said("bees", "")),
            Map.entry("bee-note", new Said("note on bees", "")),
            Map.entry("when", new Said("condition", "")),
            Map.entry("group", new Said("mode-of-action group", "")),
            Map.entry("restricted-use", new Said("for licensed applicators only", "")),
            Map.entry("organic", new Said("organic status", "")),
            Map.entry("sample", new Said("sample size", "")),
            Map.entry("unit", new Said("sampling unit", "")),
            Map.entry("how", new Said("how it is done", "")),
            Map.entry("audiences", new Said("for", "")),
            Map.entry("spare", new Said("natural enemies to spare", "")),
            Map.entry("keeps-down", new Said("keeps down", "")),
            Map.entry("comes-off", new Said("when the cover comes off", "")),
            Map.entry("look-alikes", new Said("look-alike", "")),
            Map.entry("year", new Said("its year", "")),
            Map.entry("image", new Said("drawing", "")),
            Map.entry("handbook", new Said("longer text", "")),
            Map.entry("garden", new Said("garden text", "")));

    /** Kinds of record that ids under a key belong to. */
    private static final Map<String, String> REFERENCES = Map.ofEntries(Map.entry("material", "materials"),
            Map.entry("practice", "practices"), Map.entry("enemy", "enemies"), Map.entry("spare", "enemies"),
            Map.entry("crop", "crops"), Map.entry("crops", "crops"), Map.entry("entries", "pests"),
            Map.entry("keeps-down", "pests"), Map.entry("entry", "pests"), Map.entry("together", "pests"),
            Map.entry("source", "sources"), Map.entry("sources", "sources"));

    private final Snapshot facts;

    FactWords(Snapshot facts) {
        this.facts = facts;
    }

    static String key(String key) {
        return KEYS.containsKey(key) ? KEYS.get(key).words() : key.replace('-', ' ');
    }

    /** A path of keys; the short form of a text is the text itself. */
    static String path(List<String> keys) {
        return keys.stream().filter(key -> !key.equals("pocket")).map(FactWords::key)
                .collect(Collectors.joining(", "));
    }

    static String unit(String key) {
        return KEYS.containsKey(key) ? KEYS.get(key).unit() : "";
    }

    /** A value that stands under a key. */
    String value(String key, Fact fact) {
        if (fact instanceof Fact.Word word) {
            return key.equals("image") ? "one" : isText(key) ? quoted(word.text()) : name(key, word.text());
        }
        if (fact instanceof Fact.Items items) {
            return items.facts().stream().map(item -> value(key, item)).collect(Collectors.joining(", "));
        }
        Fact.Group group = (Fact.Group) fact;
        if (Difference.isRange(group)) {
            String from = group.word("from").orElse("");
            String to = group.word("to").orElse("");
            return from.equals(to) ? from : from + "–" + to;
        }
        if (group.get("pocket").isPresent()) {
            return quoted(group.word("pocket").orElse(""));
        }
        return cut(group.facts().entrySet().stream().filter(entry -> !entry.getKey().equals("id"))
                .map(entry -> key(entry.getKey()) + " " + value(entry.getKey(), entry.getValue()))
                .collect(Collectors.joining(", ")));
    }

    private static boolean isText(String key) {
        return List.of("pocket", "handbook", "garden", "body").contains(key);
    }

    /** The name of what an id stands for, where the key says what kind it is of. */
    String name(String key, String id) {
        String kind = REFERENCES.get(key);
        if (kind == null) {
            return id;
        }
        if (kind.equals("sources")) {
            return facts.get(kind, id).map(Snapshot.Known::facts).map(source ->
                    source.word("authors").orElse(id) + source.word("year").map(year -> " " + year)
                            .orElse("")).orElse(id);
        }
        return facts.get(kind, id).isEmpty() && kind.equals("pests") ? facts.name("enemies", id)
                : facts.name(kind, id);
    }

    static String quoted(String text) {
        return "'" + cut(text.replaceAll("\\s+", " ")) + "'";
    }

    private static String cut(String text) {
        return text.codePointCount(0, text.length()) <= LONGEST ? text
                : text.substring(0, text.offsetByCodePoints(0, LONGEST)) + "…";
    }

    /** Crop, stage and readers: what tells one of several apart. */
    String about(Fact.Group item) {
        return List.of("crop", "when", "audiences").stream()
                .flatMap(key -> item.get(key).filter(fact -> !(fact instanceof Fact.Group))
                        .map(fact -> value(key, fact)).stream())
                .collect(Collectors.joining(", "));
    }

    static Optional<String> pocket(Fact.Group item, String key) {
        return item.group(key).word("pocket");
    }
}
