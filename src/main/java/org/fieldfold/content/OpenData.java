package org.fieldfold.content;

import java.lang.reflect.RecordComponent;
import java.time.MonthDay;
import java.time.temporal.TemporalAccessor;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Keys;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Text;
import org.fieldfold.prose.Prose;
import org.fieldfold.report.JsonText;
import tools.jackson.core.JsonGenerator;

/**
 * The whole base as one JSON document, for anybody's program: the keys and words that the files have, with
 * what is kept one record a file as a map from id to record. {@link ContentSchema#ofBase()} describes it.
 */
public final class OpenData {
    private OpenData() {
    }

    /** The document; the same base gives the same text. */
    public static String of(ContentBase base) {
        Map<FileKind, Object> all = Map.ofEntries(Map.entry(FileKind.EDITION, base.edition().value()),
                Map.entry(FileKind.CROPS, values(base.crops())),
                Map.entry(FileKind.ACTIVE_INGREDIENTS, values(base.materials())),
                Map.entry(FileKind.SOURCES, values(base.sources())),
                Map.entry(FileKind.PRICES, values(base.prices())),
                Map.entry(FileKind.PEST, byId(base.pests())),
                Map.entry(FileKind.NATURAL_ENEMY, byId(base.enemies())),
                Map.entry(FileKind.PRACTICE, byId(base.practices())),
                Map.entry(FileKind.GUIDE, byId(base.guides())),
                Map.entry(FileKind.OFFICE, byId(base.offices())),
                Map.entry(FileKind.FIGURE, byId(base.figures())));
        return JsonText.of(json -> {
            json.writeStartObject();
            for (FileKind kind : FileKind.values()) {
                if (kind.isYaml()) {
                    json.writeName(key(kind));
                    write(json, all.get(kind));
                }
            }
            json.writeEndObject();
        });
    }

    /** The key under which a kind's records stand. */
    static String key(FileKind kind) {
        return kind.folder().isEmpty() ? kind.schema() : kind.folder();
    }

    private static List<Object> values(Map<String, ? extends Placed<?>> placed) {
        return placed.values().stream().map(Placed::value).collect(Collectors.toList());
    }

    private static Map<String, Object> byId(Map<String, ? extends Placed<?>> placed) {
        Map<String, Object> records = new LinkedHashMap<>();
        placed.forEach((id, record) -> records.put(id,
                record.value() instanceof Figure figure
                        ? figure.note()
                        : new OneFile((Record) record.value())));
        return records;
    }

    /** A record whose id is the name of its file, and so no key in it. */
    private record OneFile(Record facts) {
    }

    private static void write(JsonGenerator json, Object value) {
        if (value instanceof OneFile file) {
            fields(json, file.facts(), true);
        } else if (value instanceof Text text && text.handbook().isEmpty() && text.garden().isEmpty()) {
            json.writeString(text.pocket().markdown());
        } else if (value instanceof Prose prose) {
            json.writeString(prose.markdown());
        } else if (value instanceof Record facts) {
            fields(json, facts, false);
        } else if (value instanceof Collection<?> list) {
            json.writeStartArray();
            list.forEach(item -> write(json, item));
            json.writeEndArray();
        } else if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            map.forEach((key, item) -> {
                json.writeName((String) key);
                write(json, item);
            });
            json.writeEndObject();
        } else if (value instanceof Integer number) {
            json.writeNumber(number);
        } else if (value instanceof Double number) {
            decimal(json, number);
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else if (value instanceof Enum<?> word) {
            json.writeString(Keys.word(word));
        } else if (value instanceof MonthDay day) {
            json.writeString(day.toString().substring(2));
        } else if (value instanceof String || value instanceof TemporalAccessor) {
            json.writeString(value.toString());
        } else {
            throw new IllegalArgumentException("no form in JSON for a " + value.getClass().getSimpleName());
        }
    }

    private static void decimal(JsonGenerator json, double number) {
        if (number == StrictMath.rint(number) && StrictMath.abs(number) < 1e15) {
            json.writeNumber((long) number);
        } else {
            json.writeNumber(number);
        }
    }

    private static void fields(JsonGenerator json, Record facts, boolean idFromFileName) {
        json.writeStartObject();
        if (facts instanceof Control control) {
            json.writeNumberProperty("tier", control.tier());
        }
        for (RecordComponent component : Keys.components(facts)) {
            Object value = Keys.value(facts, component);
            boolean absent = value instanceof Optional<?> optional && optional.isEmpty()
                    || value instanceof Collection<?> list && list.isEmpty()
                    || idFromFileName && component.getName().equals("id");
            if (!absent) {
                json.writeName(Keys.of(component));
                write(json, value instanceof Optional<?> optional ? optional.get() : value);
            }
        }
        json.writeEndObject();
    }
}
