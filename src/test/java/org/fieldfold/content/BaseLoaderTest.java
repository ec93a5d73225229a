package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.LifeStage;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.scouting.Metric;
import org.fieldfold.source.Span;
import org.junit.jupiter.api.Test;

class BaseLoaderTest {
    @Test
    void readsTheShippedBase() throws IOException {
        LoadedBase loaded = BaseLoader.load(Path.of("content"));
        assertEquals(List.of(), loaded.findings().stream().map(Base::shown).toList());
        Placed<PestEntry> beetle = loaded.base().orElseThrow().pests().get("colorado-potato-beetle");
        PestEntry entry = beetle.value();
        assertEquals("Leptinotarsa decemlineata (Say, 1824)", entry.names().scientific());
        assertEquals(LifeStage.ADULT, entry.stages().get(0).stage());
        assertEquals(9, entry.stages().get(0).size().from());
        assertEquals(Metric.COUNT_PER_SAMPLE, entry.thresholds().get(0).metric());
        assertEquals(50, entry.thresholds().get(0).value().orElseThrow());
        assertEquals(LocalDate.of(2026, 11, 12), entry.revised().orElseThrow());
        assertTrue(entry.controls().get(4) instanceof Control.Insecticide spinosad
                && spinosad.material().equals("spinosad"));
        Span value = beetle.at("thresholds", 0, "value");
        assertEquals("    value: 50", value.file().lineText(value.line()));
        assertEquals(12, value.column());
    }

    @Test
    void namesTheFilesItRead() throws IOException {
        InputFile first = BaseLoader.load(Path.of("content")).inputs().get(0);
        assertEquals("content/active-ingredients.yaml", first.path());
        assertTrue(first.size() > 0 && first.sha256().matches("[0-9a-f]{64}"), first.toString());
    }
}
