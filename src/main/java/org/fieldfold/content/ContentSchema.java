package org.fieldfold.content;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.json.JsonMapper;

/**
 * JSON Schemas (draft-07, which editors' YAML support reads) of the content files, written from the same
 * shapes from which the files are bound, so that an editor and the loader ask for the same.
 */
public final class ContentSchema {
    private static final String DATE = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$";
    private static final String MONTH_DAY = "^[0-9]{2}-[0-9]{2}$";
    private static final String ID = "^[a-z0-9]+(-[a-z0-9]+)*$";

    private final Map<String, Object> definitions = new TreeMap<>();

    private ContentSchema() {
    }

    /** The kinds of file that have a schema, as in {@code pest}. */
    public static List<String> kinds() {
        return Arrays.stream(FileKind.values()).filter(FileKind::isYaml).map(FileKind::schema).toList();
    }

    /**
     * The schema of a kind of file, as JSON text with LF.
     *
     * @throws IllegalArgumentException when there is no such kind
     */
    public static String of(String kind) {
        FileKind file = Arrays.stream(FileKind.values())
                .filter(known -> known.isYaml() && known.schema().equals(kind))
                .findFirst().orElseThrow(() -> new IllegalArgumentException("expected one of " + kinds()
                        + ", found " + kind));
        return new ContentSchema().write(file);
    }

    /** The schema of {@link OpenData}: the whole base in one document, with the keys that the files have. */
    public static String ofBase() {
        ContentSchema bundle = new ContentSchema();
        Map<String, Object> properties = new LinkedHashMap<>();
        for (FileKind kind : FileKind.values()) {
            if (kind.isYaml()) {
                Map<String, Object> record = bundle.fields(kind.shape(), Map.of());
                properties.put(OpenData.key(kind), kind == FileKind.EDITION ? record
                        : kind.listKey().isPresent() ? ordered("type", "array", "items", record)
                        : ordered("type", "object", "additionalProperties", record));
            }
        }
        Map<String, Object> schema = headed("content base");
        schema.put("type", "object");
        schema.put("properties", properties);
        schema.put("required", List.copyOf(properties.keySet()));
        schema.put("additionalProperties", false);
        schema.put("definitions", bundle.definitions);
        return text(schema);
    }

    private static Map<String, Object> headed(String title) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "http://json-schema.org/draft-07/schema#");
        schema.put("title", title);
        return schema;
    }

    private String write(FileKind kind) {
        Map<String, Object> schema = headed(kind.schema().replace('-', ' '));
        Map<String, Object> record = fields(kind.shape(), Map.of());
        kind.listKey().ifPresentOrElse(key -> {
            schema.put("type", "object");
            schema.put("properties", Map.of(key, ordered("type", "array", "items", record)));
            schema.put("required", List.of(key));
            schema.put("additionalProperties", false);
        }, () -> schema.putAll(record));
        schema.put("definitions", definitions);
        return text(schema);
    }

    private static String text(Map<String, Object> schema) {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(lines)
                .withArrayIndenter(lines);
        return JsonMapper.builder().defaultPrettyPrinter(printer).build().writerWithDefaultPrettyPrinter()
                .writeValueAsString(schema) + "\n";
    }

    private Map<String, Object> fields(Shape.Fields fields, Map<String, Object> besides) {
        Map<String, Object> properties = new LinkedHashMap<>(besides);
        for (Shape.Field field : fields.fields()) {
            if (field.presence() != Shape.Presence.FROM_FILE_NAME) {
                properties.put(field.key(), described(field));
            }
        }
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("properties", properties);
        List<String> required = fields.fields().stream().filter(field ->
                field.presence() == Shape.Presence.REQUIRED)
                .map(Shape.Field::key).toList();
        if (!required.isEmpty()) {
            schema.put("required", required);
        }
        schema.put("additionalProperties", false);
        return schema;
    }

    private Map<String, Object> described(Shape.Field field) {
        Map<String, Object> described = new LinkedHashMap<>();
        if (!field.description().isEmpty()) {
            described.put("description", field.description());
        }
        Map<String, Object> value = schema(field.shape());
        // beside a reference draft-07 reads nothing else
        described.putAll(value.containsKey("$ref") ? Map.of("allOf", List.of(value)) : value);
        if (field.key().equals("id")) {
            // an id may look like a number, as long as it has only digits
            described.put("type", List.of("string", "integer", "boolean"));
            described.put("minimum", 0);
            described.put("pattern", ID);
            described.put("maxLength", 64);
        }
        if (!field.range().equals(Shape.Range.ANY)) {
            // all limits are whole numbers
            described.put("minimum", (long) field.range().from());
            described.put("maximum", (long) field.range().to());
        }
        return described;
    }

    private Map<String, Object> schema(Shape shape) {
        if (shape instanceof Shape.Words words) {
            return Map.of("enum", List.copyOf(words.byWord().keySet()));
        }
        if (shape instanceof Shape.Listed list) {
            return ordered("type", "array", "items", schema(list.item()));
        }
        if (shape instanceof Shape.Fields fields) {
            return reference(fields.name().replace(' ', '-'), () -> fields(fields, Map.of()));
        }
        if (shape instanceof Shape.Tiers tiers) {
            return reference("control", () -> tiers(tiers));
        }
        return plain((Shape.Plain) shape);
    }

    private Map<String, Object> plain(Shape.Plain shape) {
        return switch (shape) {
            case INTEGER -> ordered("type", "integer");
            case NUMBER -> ordered("type", "number");
            case TRUTH -> ordered("type", "boolean");
            case DATE -> ordered("type", "string", "pattern", DATE);
            case MONTH_DAY -> ordered("type", "string", "pattern", MONTH_DAY);
            case TEXT -> reference("text", this::text);
            // a text is taken as it is written: 4 or true is one too
            case STRING, PROSE -> ordered("type", List.of("string", "number", "boolean"), "pattern", "\\S");
        };
    }

    /** One string, or a map of its forms: what is said about strings binds only strings, and so on. */
    private Map<String, Object> text() {
        Map<String, Object> forms = fields(Shapes.text(), Map.of());
        forms.put("type", List.of("string", "number", "boolean", "object"));
        forms.put("pattern", "\\S");
        return forms;
    }

    private Map<String, Object> tiers(Shape.Tiers tiers) {
        Map<String, Object> tier = ordered("description",
                "1 cultural, 2 exclusion and natural enemies, 3 insecticide",
                "enum", List.of(1, 2, 3));
        List<Object> byTier = java.util.stream.IntStream.range(0, tiers.byTier().size()).mapToObj(i ->
                (Object) ordered(
                "if", ordered("properties", Map.of("tier", Map.of("const", i + 1)), "required",
                        List.of("tier")),
                "then", reference(tiers.byTier().get(i).name().replace(' ', '-'),
                        () -> fields(tiers.byTier().get(i), Map.of("tier", tier))))).toList();
        return ordered("type", "object", "properties", Map.of("tier", tier), "required", List.of("tier"),
                "allOf", byTier);
    }

    private Map<String, Object> reference(String name, java.util.function.Supplier<Map<String,
            Object>> schema) {
        if (!definitions.containsKey(name)) {
            definitions.put(name, Map.of());
            definitions.put(name, schema.get());
        }
        return ordered("$ref", "#/definitions/" + name);
    }

    private static Map<String, Object> ordered(Object... pairs) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put((String) pairs[i], pairs[i + 1]);
        }
        return map;
    }
}
