package org.fieldfold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.net.URI;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Findings as other programs read them. */
class FindingFormatTest {
    private static final SourceFile PEST = new SourceFile("content/pests/leek moth é.yaml",
            "names:\n  common: \"Leek & <moth>\"\nsize: 2\n");
    private static final SourceFile GUIDE = new SourceFile("content/guides/onion.yaml", "title: Onions\n");
    private static final Finding ERROR = Finding.error(new Span(PEST, 17, 32), "some-rule",
            "expected \"a\", found 'b' & <c> \u0001", "write a");
    private static final Finding WARNING = Finding.warning(new Span(PEST, 33, 40), "other-rule",
            "expected x, found y", "");
    private static final Finding INFO = Finding.info(new Span(GUIDE, 7, 13), "some-rule",
            "expected p, found q", "do p");
    private static final List<Finding> ALL = List.of(INFO, ERROR, WARNING);

    private static JsonNode json(FindingFormat format, List<Finding> findings) {
        return new ObjectMapper().readTree(format.write(findings, false));
    }

    @Test
    void textIsWhatPeopleReadWithACountBelow() {
        String text = FindingFormat.TEXT.write(ALL, false);
        assertTrue(text.startsWith("content/guides/onion.yaml:1:8: info: expected p, found q [some-rule]\n"),
                text);
        assertTrue(text.endsWith("\n1 error, 1 warning, 1 note\n"), text);
        assertEquals("0 errors, 0 warnings, 0 notes\n", FindingFormat.TEXT.write(List.of(), false));
    }

    @Test
    void jsonHasOneObjectAFinding() {
        JsonNode findings = json(FindingFormat.JSON, ALL).get("findings");
        assertEquals(3, findings.size());
        JsonNode error = findings.get(1);
        assertEquals("error", error.get("severity").asString());
        assertEquals("some-rule", error.get("rule").asString());
        assertEquals(PEST.path(), error.get("path").asString());
        assertEquals(2, error.get("line").asInt());
        assertEquals(11, error.get("column").asInt());
        assertEquals(ERROR.message(), error.get("message").asString());
        assertEquals("write a", error.get("hint").asString());
        assertEquals(0, json(FindingFormat.JSON, List.of()).get("findings").size());
    }

    /**
     * Members that SARIF 2.1.0 (OASIS, 27 March 2020) requires: 3.13.2 version, 3.13.4 runs, 3.14.6 tool,
     * 3.18.2 driver, 3.19.8 name, 3.27.11 message; and the values it allows: 3.27.10 level, 3.14.17
     * columnKind, 3.30 region from 1, 3.27.6 ruleIndex into the driver's rules. Clause numbers are values
     * from memory.
     */
    @Test
    void sarifHasWhatTheStandardRequires() throws Exception {
        JsonNode log = json(FindingFormat.SARIF, ALL);
        assertEquals("2.1.0", log.get("version").asString());
        assertTrue(log.get("$schema").asString().endsWith("sarif-2.1.0.json"));
        assertEquals(1, log.get("runs").size());
        JsonNode run = log.get("runs").get(0);
        assertTrue(Set.of("utf16CodeUnits", "unicodeCodePoints").contains(run.get("columnKind").asString()));
        JsonNode driver = run.get("tool").get("driver");
        assertFalse(driver.get("name").asString().isEmpty());
        Set<String> ids = new HashSet<>();
        driver.get("rules").forEach(rule -> assertTrue(ids.add(rule.get("id").asString())));
        assertEquals(ALL.size(), run.get("results").size());
        for (int i = 0; i < ALL.size(); i++) {
            JsonNode result = run.get("results").get(i);
            assertFalse(result.get("message").get("text").asString().isEmpty());
            assertTrue(Set.of("none", "note", "warning", "error").contains(result.get("level").asString()));
            assertEquals(result.get("ruleId"), driver.get("rules").get(result.get("ruleIndex").asInt())
                    .get("id"));
            JsonNode place = result.get("locations").get(0).get("physicalLocation");
            URI address = new URI(place.get("artifactLocation").get("uri").asString());
            assertFalse(address.isAbsolute());
            assertEquals(ALL.get(i).span().file().path(), address.getPath());
            JsonNode region = place.get("region");
            assertTrue(region.get("startLine").asInt() >= 1 && region.get("startColumn").asInt() >= 1);
            assertEquals(ALL.get(i).span().line(), region.get("startLine").asInt());
            assertEquals(ALL.get(i).span().column() + ALL.get(i).span().end() - ALL.get(i).span().start(),
                    region.get("endColumn").asInt());
            assertFalse(result.get("partialFingerprints").isEmpty());
        }
        assertEquals(List.of("note", "error", "warning"), run.get("results").valueStream()
                .map(result -> result.get("level").asString()).toList());
    }

    @Test
    void aFingerprintOutlivesMovedLinesButNotOtherWords() {
        SourceFile moved = new SourceFile(PEST.path(), "# a line more\n" + PEST.text());
        Finding later = Finding.error(new Span(moved, 31, 46), ERROR.rule(), ERROR.message(), ERROR.hint());
        Finding other = Finding.error(ERROR.span(), ERROR.rule(), "expected z, found b", "");
        assertEquals(fingerprint(ERROR), fingerprint(later));
        assertNotEquals(fingerprint(ERROR), fingerprint(other));
    }

    private static JsonNode fingerprint(Finding finding) {
        return json(FindingFormat.SARIF, List.of(finding)).get("runs").get(0).get("results").get(0)
                .get("partialFingerprints");
    }

    @Test
    void junitHasACaseAFileAndFailsWhereAnErrorStands() throws Exception {
        Document xml = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader(FindingFormat.JUNIT.write(ALL, false))));
        Element suite = xml.getDocumentElement();
        assertEquals("testsuite", suite.getTagName());
        assertEquals("2", suite.getAttribute("tests"));
        assertEquals("1", suite.getAttribute("failures"));
        NodeList cases = suite.getElementsByTagName("testcase");
        assertEquals(2, cases.getLength());
        Element guide = (Element) cases.item(0);
        Element pest = (Element) cases.item(1);
        assertEquals(GUIDE.path(), guide.getAttribute("name"));
        assertEquals(0, guide.getElementsByTagName("failure").getLength());
        assertEquals(PEST.path(), pest.getAttribute("name"));
        String failure = pest.getElementsByTagName("failure").item(0).getTextContent();
        assertTrue(failure.contains("found 'b' & <c>") && failure.contains("other-rule"), failure);
    }

    @Test
    void junitOfNothingIsAnEmptySuite() throws Exception {
        Document xml = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader(FindingFormat.JUNIT.write(List.of(), false))));
        assertEquals("0", xml.getDocumentElement().getAttribute("tests"));
    }

    @Test
    void everyFormEndsItsLinesWithLf() {
        for (FindingFormat format : FindingFormat.values()) {
            String written = format.write(ALL, false);
            assertTrue(written.endsWith("\n") && !written.contains("\r"), format + ": " + written);
            assertEquals(written, format.write(ALL, false));
        }
    }
}
