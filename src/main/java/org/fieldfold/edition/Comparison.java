package org.fieldfold.edition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.fieldfold.report.JsonText;
import tools.jackson.core.JsonGenerator;

/**
 * What changed from one edition to another, fact by fact. What every new edition has, its year and its dates,
 * is no change, and neither is who signed.
 *
 * @param from the older one, as in {@code edition 2026}
 * @param to the newer one
 */
public record Comparison(String from, String to, List<Change> changes) {
    private static final List<String> OF_THE_YEAR =
            List.of("year", "issued", "valid-from", "valid-until", "handbook", "re-read-after");

    public Comparison {
        changes = List.copyOf(changes);
    }

    /** Whether two records of one name have the same facts. */
    interface Sameness {
        boolean of(String name, Snapshot.Known before, Snapshot.Known after);
    }

    public static Comparison of(String from, Snapshot before, String to, Snapshot after) {
        return of(from, before, to, after, (name, was, is) -> was.facts().equals(is.facts()));
    }

    /** @param same is asked before a record is gone through fact by fact */
    static Comparison of(String from, Snapshot before, String to, Snapshot after, Sameness same) {
        List<Change> changes = new ArrayList<>();
        TreeSet<String> kinds = new TreeSet<>(before.records().keySet());
        kinds.addAll(after.records().keySet());
        for (String kind : kinds) {
            TreeSet<String> ids = new TreeSet<>();
            Optional.ofNullable(before.records().get(kind)).ifPresent(byId -> ids.addAll(byId.keySet()));
            Optional.ofNullable(after.records().get(kind)).ifPresent(byId -> ids.addAll(byId.keySet()));
            ids.stream().filter(id -> !isSame(before, after, kind, id, same))
                    .forEach(id -> record(before, after, kind, id, changes));
        }
        changes.sort(Comparator.comparing(Change::group));
        return new Comparison(from, to, changes);
    }

    private static boolean isSame(Snapshot before, Snapshot after, String kind, String id, Sameness same) {
        Optional<Snapshot.Known> was = before.get(kind, id);
        Optional<Snapshot.Known> is = after.get(kind, id);
        return was.isPresent() && is.isPresent() && same.of(kind + "/" + id, was.get(), is.get());
    }

    private static void record(Snapshot before, Snapshot after, String kind, String id,
            List<Change> changes) {
        ChangeWriting writing = new ChangeWriting(before, after, kind, id);
        Optional<Fact.Group> was = before.get(kind, id).map(known -> lasting(kind, known));
        Optional<Fact.Group> is = after.get(kind, id).map(known -> lasting(kind, known));
        if (was.isPresent() && is.isPresent()) {
            changes.addAll(writing.between(was.get(), is.get()));
        } else {
            changes.add(writing.whole(is.isPresent()));
        }
    }

    private static Fact.Group lasting(String kind, Snapshot.Known known) {
        Fact.Group facts = known.facts();
        if (kind.equals("edition")) {
            for (String key : OF_THE_YEAR) {
                facts = facts.without(key);
            }
        }
        return facts;
    }

    /** The changes of one group, in the order of their records. */
    public List<Change> in(ChangeGroup group) {
        return changes.stream().filter(change -> change.group() == group).toList();
    }

    /** As lines for a terminal. */
    public String text() {
        StringBuilder out = new StringBuilder("from " + from + " to " + to + ": "
                + (changes.isEmpty() ? "no fact changed\n" : changes.size() == 1 ? "1 change\n"
                : changes.size() + " changes\n"));
        for (ChangeGroup group : ChangeGroup.values()) {
            List<Change> of = in(group);
            if (!of.isEmpty()) {
                out.append('\n').append(group.heading()).append('\n');
                of.forEach(change -> out.append("  ").append(change.sentence()).append('\n'));
            }
        }
        return out.toString();
    }

    /** As JSON, for other programs. */
    public String json() {
        return JsonText.of(json -> {
            json.writeStartObject();
            json.writeStringProperty("from", from);
            json.writeStringProperty("to", to);
            json.writeArrayPropertyStart("changes");
            changes.forEach(change -> write(json, change));
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private static void write(JsonGenerator json, Change change) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("group", change.group().word());
        facts.put("kind", change.kind());
        facts.put("id", change.id());
        facts.put("name", change.name());
        facts.put("thing", change.thing());
        facts.put("about", change.about());
        facts.put("item", change.item());
        facts.put("sentence", change.sentence());
        json.writeStartObject();
        facts.forEach(json::writeStringProperty);
        json.writeArrayPropertyStart("parts");
        for (Change.Part part : change.parts()) {
            json.writeStartObject();
            json.writeStringProperty("what", part.what());
            part.before().ifPresent(words -> json.writeStringProperty("before", words));
            part.after().ifPresent(words -> json.writeStringProperty("after", words));
            json.writeStringProperty("unit", part.unit());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }
}
