package org.fieldfold;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fieldfold.check.Rulebook;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.pdf.Press;
import org.fieldfold.preview.Resource;
import org.fieldfold.report.JsonText;
import org.fieldfold.report.Sha256;
import org.fieldfold.source.Finding;
import org.fieldfold.source.FindingPrinter;
import org.fieldfold.typeset.Face;
import tools.jackson.core.JsonGenerator;

/** The preview's page: its own files, and what it is told about an entry. */
final class PreviewPage {
    private static final int MOST_FINDINGS = 400;

    private PreviewPage() {
    }

    /** An entry to choose. */
    record Listed(String id, String name, String kind) {
    }

    /** The page itself, its style, its script and the type of the press, by address. */
    static Map<String, Resource> resources() {
        Map<String, Resource> own = new TreeMap<>();
        own.put("/", Resource.named("preview.html", read("preview.html")));
        own.put("/preview.css", Resource.named("preview.css", read("preview.css")));
        own.put("/preview.js", Resource.named("preview.js", read("preview.js")));
        for (Face face : Face.values()) {
            String name = "/type/" + face.name().toLowerCase(Locale.ROOT).replace('_', '-') + ".ttf";
            own.put(name, Resource.named(name, Press.typeFile(face)));
        }
        return own;
    }

    private static byte[] read(String name) {
        try (InputStream in = Resource.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the file " + name + " of the preview is missing");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All entries, by kind and name; those that cannot be read under their ids. */
    static List<Listed> listed(ContentBase base) {
        List<Listed> listed = new ArrayList<>();
        base.pests().forEach((id, pest) -> listed.add(new Listed(id, pest.value().names().common(), "Pests")));
        base.enemies().forEach((id, enemy) -> listed.add(new Listed(id, enemy.value().names().common(),
                "Natural enemies")));
        base.practices().forEach((id, practice) -> listed.add(new Listed(id, practice.value().name(),
                "Practices")));
        base.unread().keySet().forEach(id -> listed.add(new Listed(id, id, "Cannot be read")));
        return listed.stream().map(one -> new Listed(one.id(), Phrases.capital(one.name()), one.kind())).toList();
    }

    /** What the page shows of an entry, as JSON. */
    static byte[] view(long version, String entry, List<Listed> listed, List<String> notes,
            List<PreviewGuides.Shown> panels, Optional<String> book, Optional<byte[]> page,
            List<Finding> findings) {
        List<Finding> own = findings.stream().filter(finding -> isOf(entry, finding)).toList();
        List<Finding> others = findings.stream().filter(finding -> !isOf(entry, finding)).toList();
        return JsonText.of(json -> {
            json.writeStartObject();
            json.writeNumberProperty("version", version);
            json.writeStringProperty("entry", entry);
            json.writeStringProperty("summary", FindingPrinter.summary(findings));
            json.writeStringProperty("summaryHere", FindingPrinter.summary(own));
            json.writeStringProperty("book", book.orElse(""));
            json.writeStringProperty("bookHash", page.map(Sha256::of).orElse(""));
            json.writeArrayPropertyStart("notes");
            notes.forEach(json::writeString);
            json.writeEndArray();
            json.writeArrayPropertyStart("listed");
            for (Listed one : listed) {
                json.writeStartObject();
                json.writeStringProperty("id", one.id());
                json.writeStringProperty("name", one.name());
                json.writeStringProperty("kind", one.kind());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayPropertyStart("panels");
            panels.forEach(shown -> panel(json, shown));
            json.writeEndArray();
            findings(json, "findings", own);
            findings(json, "others", others);
            json.writeEndObject();
        }).getBytes(StandardCharsets.UTF_8);
    }

    private static boolean isOf(String entry, Finding finding) {
        String file = finding.span().file().path();
        return !entry.isEmpty() && file.endsWith("/" + entry + ".yaml");
    }

    private static void panel(JsonGenerator json, PreviewGuides.Shown shown) {
        json.writeStartObject();
        json.writeStringProperty("guide", shown.guide());
        json.writeStringProperty("paper", shown.paper());
        json.writeArrayPropertyStart("drawings");
        shown.drawings().forEach(json::writeString);
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void findings(JsonGenerator json, String name, List<Finding> findings) {
        json.writeArrayPropertyStart(name);
        for (Finding finding : findings.stream().limit(MOST_FINDINGS).toList()) {
            json.writeStartObject();
            json.writeStringProperty("severity", finding.severity().word());
            json.writeStringProperty("place", finding.span().place());
            json.writeNumberProperty("line", finding.span().line());
            json.writeStringProperty("source", finding.span().file().lineText(finding.span().line()).strip());
            json.writeStringProperty("message", finding.message());
            json.writeStringProperty("hint", finding.hint());
            json.writeStringProperty("rule", finding.rule());
            json.writeStringProperty("asks", Rulebook.summary(finding.rule()).orElse(""));
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
