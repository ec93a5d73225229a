package org.fieldfold.content;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fieldfold.entry.ActiveIngredient;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.Threshold;

/** Tables of the content base that can be edited in a spreadsheet. */
public enum TableKind {
    THRESHOLDS("thresholds", Threshold.class, List.of("entry", "id"), "crop", "when", "stages/from",
            "stages/to", "metric", "value", "per", "days", "counted", "monitoring", "source", "note"),
    MATERIALS("active-ingredients", ActiveIngredient.class, List.of("id"), "name", "group", "organic",
            "phi-days/from", "phi-days/to", "rei-hours/from", "rei-hours/to", "bees", "bee-note",
            "restricted-use", "label-checked", "withdrawn"),
    MONITORING("monitoring", Monitoring.class, List.of("entry", "id"), "method", "unit", "sample", "walk",
            "stops", "every-days", "how");

    private final String list;
    private final Class<?> type;
    private final List<String> keys;
    private final List<Column> columns;

    TableKind(String list, Class<?> type, List<String> keys, String... columns) {
        this.list = list;
        this.type = type;
        this.keys = keys;
        this.columns = Arrays.stream(columns).map(path -> new Column(path.replace('/', ' '),
                List.of(path.split("/")))).toList();
    }

    /**
     * What may be changed.
     *
     * @param name over the column
     * @param path of keys, from the record
     */
    record Column(String name, List<String> path) {
    }

    /** As it is named in a command. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The key under which the records stand in their file. */
    String list() {
        return list;
    }

    /** The columns that say which record a row is. */
    List<String> keys() {
        return keys;
    }

    List<Column> columns() {
        return columns;
    }

    Optional<Column> column(String name) {
        return columns.stream().filter(column -> column.name().equals(name)).findFirst();
    }

    /** What may stand in a column. */
    Shape.Field field(Column column) {
        Shape.Fields fields = Shapes.fields(type, false);
        Shape.Field field = null;
        for (String key : column.path()) {
            field = fields.fields().stream().filter(known -> known.key().equals(key)).findFirst()
                    .orElseThrow(() -> new IllegalStateException("no key " + key + " in " + type));
            fields = field.shape() instanceof Shape.Fields inner ? inner : fields;
        }
        return field;
    }
}
