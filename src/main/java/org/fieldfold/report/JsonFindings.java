package org.fieldfold.report;

import java.util.List;
import org.fieldfold.source.Finding;
import tools.jackson.core.JsonGenerator;

/** Findings as a JSON object with one list. */
final class JsonFindings {
    private JsonFindings() {
    }

    static String write(List<Finding> findings) {
        return JsonText.of(json -> {
            json.writeStartObject();
            list(json, findings);
            json.writeEndObject();
        });
    }

    static void list(JsonGenerator json, List<Finding> findings) {
        json.writeArrayPropertyStart("findings");
        for (Finding finding : findings) {
            json.writeStartObject();
            json.writeStringProperty("severity", finding.severity().word());
            json.writeStringProperty("rule", finding.rule());
            json.writeStringProperty("path", finding.span().file().path());
            json.writeNumberProperty("line", finding.span().line());
            json.writeNumberProperty("column", finding.span().column());
            json.writeStringProperty("message", finding.message());
            json.writeStringProperty("hint", finding.hint());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
