package org.fieldfold.edition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads facts back from the JSON in which a ledger keeps them. */
final class FactReading {
    private static final JsonMapper JSON =
            JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

    private FactReading() {
    }

    /** The facts; empty when the text is no JSON object. */
    static Optional<Fact.Group> read(String json) {
        try {
            return fact(JSON.readTree(json)) instanceof Fact.Group group ? Optional.of(group)
                    : Optional.empty();
        } catch (JacksonException broken) {
            return Optional.empty();
        }
    }

    private static Fact fact(JsonNode node) {
        if (node.isObject()) {
            SortedMap<String, Fact> facts = new TreeMap<>();
            node.properties().forEach(entry -> facts.put(entry.getKey(), fact(entry.getValue())));
            return new Fact.Group(facts);
        }
        if (node.isArray()) {
            List<Fact> items = new ArrayList<>();
            node.forEach(item -> items.add(fact(item)));
            return new Fact.Items(items);
        }
        return Fact.word(node.asString());
    }
}
