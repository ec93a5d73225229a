package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.json.JsonMapper;

/**
 * The schemas under {@code content/.schema} are current, accept what ships, and ask for what the loader asks
 * for.
 * To refresh them after a change of the records: {@code mvn test -Dtest=SchemaTest -Dfieldfold.refresh=true}.
 */
class SchemaTest {
    private static final Path SCHEMAS = Path.of("content/.schema");
    private static final JsonMapper JSON = JsonMapper.builder().build();

    static List<String> kinds() {
        return ContentSchema.kinds();
    }

    @BeforeAll
    static void refresh() throws IOException {
        if (Boolean.getBoolean("fieldfold.refresh")) {
            Files.createDirectories(SCHEMAS);
            for (String kind : kinds()) {
                Files.writeString(SCHEMAS.resolve(kind + ".json"), ContentSchema.of(kind));
            }
        }
    }

    private static Schema schema(String kind) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
                .getSchema(ContentSchema.of(kind));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void schemasAreCurrent(String kind) throws IOException {
        Path file = SCHEMAS.resolve(kind + ".json");
        assertTrue(Files.exists(file), file
                + " is missing: mvn test -Dtest=SchemaTest -Dfieldfold.refresh=true");
        assertEquals(ContentSchema.of(kind), Files.readString(file),
                file + " is not current: mvn test -Dtest=SchemaTest -Dfieldfold.refresh=true");
    }

    @Test
    void nothingElseLiesBesideThem() throws IOException {
        try (Stream<Path> files = Files.list(SCHEMAS)) {
            assertEquals(kinds().stream().map(kind -> kind + ".json").sorted().toList(),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    private record Document(FileKind kind, String path, Object data) {
    }

    private static List<Document> shipped() throws IOException {
        List<Document> documents = new ArrayList<>();
        for (ContentFile file : new Folder(Path.of("content")).files()) {
            if (file.kind().isYaml()) {
                List<Finding> findings = new ArrayList<>();
                YamlReading reading = YamlReading.read(Decoding.decode(file.path(),
                        Files.readAllBytes(file.file()), findings), findings);
                documents.add(new Document(file.kind(), file.path(), data(reading.root().orElseThrow())));
            }
        }
        return documents;
    }

    /** Values by the core schema of YAML 1.2, section 10.3.2, as an editor sees them. */
    private static Object data(YamlNode node) {
        if (node instanceof YamlNode.Items items) {
            return items.items().stream().map(SchemaTest::data).toList();
        }
        if (node instanceof YamlNode.Pairs pairs) {
            Map<String, Object> map = new LinkedHashMap<>();
            pairs.pairs().forEach(pair -> map.put(pair.key().value(), data(pair.value())));
            return map;
        }
        YamlNode.Scalar scalar = (YamlNode.Scalar) node;
        String value = scalar.value();
        if (scalar.style() != YamlNode.Style.PLAIN) {
            return value;
        }
        return value.matches("true|True|TRUE") ? (Object) true : value.matches("false|False|FALSE")
                ? (Object) false
                : value.matches("[-+]?[0-9]+") ? (Object) Long.parseLong(value)
                : value.matches("[-+]?(\\.[0-9]+|[0-9]+(\\.[0-9]*)?)([eE][-+]?[0-9]+)?")
                        ? (Object) Double.valueOf(value)
                : value;
    }

    @TestFactory
    Stream<DynamicTest> everyShippedFileIsValid() throws IOException {
        Map<FileKind, Schema> schemas = new TreeMap<>();
        return shipped().stream().map(document -> DynamicTest.dynamicTest(document.path, () ->
                assertEquals(List.of(),
                schemas.computeIfAbsent(document.kind, kind -> schema(kind.schema()))
                        .validate(JSON.writeValueAsString(document.data), InputFormat.JSON))));
    }

    /** One file of each kind, damaged at each of its places in each of these ways. */
    @TestFactory
    Stream<DynamicTest> schemaAndLoaderAgreeOnDamagedFiles() throws IOException {
        Map<FileKind, Document> one = new TreeMap<>();
        shipped().forEach(document -> one.merge(document.kind, document, (a, b) ->
                a.data.toString().length() >= b.data.toString().length() ? a : b));
        assertEquals(kinds().size(), one.size());
        return one.values().stream().map(document -> DynamicTest.dynamicTest(document.path, () ->
                agree(document)));
    }

    private static void agree(Document document) {
        Schema schema = schema(document.kind.schema());
        List<String> disagreements = new ArrayList<>();
        int[] refused = {0};
        damage(document.data, "", (where, damaged) -> {
            String json = JSON.writeValueAsString(damaged);
            boolean valid = schema.validate(json, InputFormat.JSON).isEmpty();
            List<Finding> findings = FileReading.of(new ContentFile("content/x", Path.of("x"), document.kind,
                    "x"), json.getBytes(StandardCharsets.UTF_8)).findings().stream()
                    // two items of one id: a schema cannot say that
                    .filter(finding -> !finding.rule().equals("colliding-id")).toList();
            refused[0] += valid ? 0 : 1;
            if (valid != findings.isEmpty()) {
                disagreements.add(where + ": schema " + (valid ? "accepts, loader: " : "refuses, loader: ")
                        + findings);
            }
        });
        assertEquals("", String.join("\n", disagreements));
        assertTrue(refused[0] > 10, "refused: " + refused[0]);
    }

    private static final List<Object> OTHERS = List.of("x", " ", "2026-11-30", "05-01", -1, 2, 120, 5000, 1.5,
            true, List.of(), List.of("x"), Map.of(), Map.of("pocket", "x"), Map.of("from", 1, "to", 2));

    private static void damage(Object data, String where, BiConsumer<String, Object> check) {
        for (Object other : OTHERS) {
            check.accept(where + " = " + other, other);
        }
        if (data instanceof Map<?, ?> map) {
            map.forEach((key, value) -> {
                Map<Object, Object> without = new LinkedHashMap<>(map);
                without.remove(key);
                check.accept(where + " without " + key, without);
                Map<Object, Object> renamed = new LinkedHashMap<>(without);
                renamed.put(key + "x", value);
                check.accept(where + " renamed " + key, renamed);
                damage(value, where + "/" + key, (inner, damaged) -> {
                    Map<Object, Object> with = new LinkedHashMap<>(map);
                    with.put(key, damaged);
                    check.accept(inner, with);
                });
            });
        } else if (data instanceof List<?> list) {
            Set<String> seen = new HashSet<>();
            for (int i = 0; i < list.size(); i++) {
                int at = i;
                if (!seen.add(form(list.get(i)))) {
                    continue;
                }
                damage(list.get(i), where + "/" + i, (inner, damaged) -> {
                    List<Object> with = new ArrayList<>(list);
                    with.set(at, damaged);
                    check.accept(inner, with);
                });
            }
        }
    }

    /** Items with the same keys, and the same tier, are damaged once. */
    private static String form(Object item) {
        return item instanceof Map<?, ?> map ? map.keySet() + " " + map.get("tier") : "";
    }
}
