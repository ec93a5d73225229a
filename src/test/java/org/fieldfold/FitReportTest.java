package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldScheme;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.manuscript.GuideWriter;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.pdf.Press;
import org.fieldfold.report.FitReport;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;
import org.fieldfold.typeset.SetGuide;
import org.fieldfold.typeset.Setter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is said of the fit of every panel, held against the guide that was set. */
class FitReportTest {
    private static final Path CONTENT = Path.of("content");
    @TempDir
    Path folder;

    private static SetGuide set(ContentBase base, String guide) {
        Manuscript manuscript = new GuideWriter(base, Phrases.in("en")).write(base.guides().get(guide),
                OfficePanel.generic(base.edition()), false);
        Map<String, byte[]> figures = new TreeMap<>();
        base.figures().forEach((id, figure) -> figures.put(id, figure.value().bytes()));
        Press press = Press.of(figures);
        FoldScheme scheme = base.scheme(base.guides().get(guide).value().scheme()).orElseThrow();
        return new Setter(press.metrics(), press.shapes()).set(manuscript,
                Imposition.of(scheme, Paper.LETTER, FlipEdge.SHORT).slots());
    }

    private static List<FitRow> rows(ContentBase base, SetGuide set) {
        return new FitRows(base).of("potato", "letter", set.fit());
    }

    private static JsonNode read(List<Finding> findings, List<FitRow> rows) {
        return JsonMapper.shared().readTree(FitReport.json(findings, rows));
    }

    @Test
    void theNumbersAreThoseOfTheSetGuide() throws IOException {
        ContentBase base = BaseLoader.load(CONTENT).base().orElseThrow();
        SetGuide set = set(base, "potato");
        JsonNode panels = read(set.findings(), rows(base, set)).get("panels");
        assertEquals(set.panels().size(), panels.size());
        for (int i = 0; i < panels.size(); i++) {
            JsonNode panel = panels.get(i);
            SetGuide.PanelFit fit = set.fit().get(i);
            assertEquals("potato", panel.get("guide").asString());
            assertEquals(fit.reading(), panel.get("panel").asInt());
            assertEquals(fit.section(), panel.get("section").asString());
            assertEquals(fit.used(), panel.get("used").asDouble(), 0.0005);
            assertEquals(set.typeSize(), panel.get("type-size").asDouble(), 0.0005);
            assertTrue(panel.get("leading").asDouble() > set.typeSize());
            assertFalse(panel.has("over"));
            List<String> forms = new ArrayList<>();
            panel.get("forms").forEach(form -> {
                assertFalse(form.get("field").asString().isEmpty(), panel.toString());
                forms.add(form.get("form").asString());
            });
            assertEquals(fit.forms().stream().map(form -> form.brief() ? "short" : "full").toList(), forms);
        }
    }

    /** The entry, the field at which its panel ends, and the same number of lines as in the finding. */
    @Test
    void aTextThatIsTooLongIsNamedWithItsEntryItsFieldAndTheLinesOver() throws IOException {
        Path content = FolderCopy.of(CONTENT, folder.resolve("content"));
        Path pest = content.resolve("pests/potato-leafhopper.yaml");
        String was = Files.readString(pest);
        String measure = "pocket: Plant varieties that stand hopper feeding";
        assertTrue(was.contains(measure), "the entry has no such measure to lengthen");
        Files.writeString(pest, was.replace(measure, measure + " and so on".repeat(400)));

        ContentBase base = BaseLoader.load(content).base().orElseThrow();
        SetGuide set = set(base, "potato");
        JsonNode report = read(set.findings(), rows(base, set));
        List<JsonNode> over = new ArrayList<>();
        report.get("panels").forEach(panel -> {
            if (panel.has("over")) {
                assertTrue(panel.get("used").asDouble() > 1, panel.toString());
                over.add(panel.get("over"));
            }
        });
        assertEquals(1, over.size(), report.get("panels").toString());
        assertEquals("potato-leafhopper", over.get(0).get("entry").asString());
        assertEquals("controls/0", over.get(0).get("field").asString());
        assertTrue(over.get(0).get("place").asString().startsWith("content/pests/potato-leafhopper.yaml:"));
        int lines = over.get(0).get("lines").asInt();
        assertTrue(lines > 20, "lines over: " + lines);
        assertTrue(set.findings().stream().anyMatch(finding -> finding.rule().equals("does-not-fit")
                && finding.message().contains(lines + " lines over")), set.findings().toString());
    }
}
