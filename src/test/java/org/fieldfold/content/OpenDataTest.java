package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.fieldfold.entry.ContentBase;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The open data are what the files say, and an independent validator finds nothing wrong with their form. */
class OpenDataTest {
    private static ContentBase base;
    private static String text;

    @BeforeAll
    static void write() throws IOException {
        base = BaseLoader.load(Path.of("content")).base().orElseThrow();
        text = OpenData.of(base);
    }

    @Test
    void theyAreAsTheirSchemaSays() {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
                .getSchema(ContentSchema.ofBase(), InputFormat.JSON);
        assertEquals(List.of(), schema.validate(text, InputFormat.JSON));
    }

    @Test
    void theySayWhatTheFilesSay() {
        JsonNode data = JsonMapper.shared().readTree(text);
        assertEquals(base.pests().size(), data.get("pests").size());
        JsonNode beetle = data.get("pests").get("colorado-potato-beetle");
        assertEquals("Leptinotarsa decemlineata (Say, 1824)",
                beetle.get("names").get("scientific").asString());
        assertEquals(50, beetle.get("thresholds").get(0).get("value").asInt());
        assertEquals("count-per-sample", beetle.get("thresholds").get(0).get("metric").asString());
        assertEquals(1, beetle.get("controls").get(0).get("tier").asInt());
        assertEquals("2027-01-15", data.get("edition").get("issued").asString());
    }
}
