package org.fieldfold.report;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;
import org.fieldfold.source.SourceFile;

/**
 * Findings as SARIF 2.1.0 (OASIS standard, 27 March 2020): one run, stable rule ids (3.27.5), paths relative
 * to the folder that holds the content base (3.4.4), 1-based lines and columns (3.30.5, 3.30.6), and a
 * fingerprint that survives moved lines (3.27.17).
 */
final class SarifFindings {
    private SarifFindings() {
    }

    static String write(List<Finding> findings) {
        List<String> rules = findings.stream().map(Finding::rule).distinct().sorted().toList();
        return JsonText.of(json -> {
            json.writeStartObject();
            json.writeStringProperty("$schema", "https://json.schemastore.org/sarif-2.1.0.json");
            json.writeStringProperty("version", "2.1.0");
            json.writeArrayPropertyStart("runs");
            json.writeStartObject();
            json.writeStringProperty("columnKind", "unicodeCodePoints");
            json.writeObjectPropertyStart("tool");
            json.writeObjectPropertyStart("driver");
            json.writeStringProperty("name", "Fieldfold");
            json.writeArrayPropertyStart("rules");
            for (String rule : rules) {
                json.writeStartObject();
                json.writeStringProperty("id", rule);
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
            json.writeEndObject();
            json.writeArrayPropertyStart("results");
            for (Finding finding : findings) {
                json.writeStartObject();
                json.writeStringProperty("ruleId", finding.rule());
                json.writeNumberProperty("ruleIndex", rules.indexOf(finding.rule()));
                json.writeStringProperty("level", level(finding.severity()));
                json.writeObjectPropertyStart("message");
                json.writeStringProperty("text", finding.hint().isEmpty() ? finding.message()
                        : finding.message() + " (" + finding.hint() + ")");
                json.writeEndObject();
                json.writeArrayPropertyStart("locations");
                json.writeStartObject();
                json.writeObjectPropertyStart("physicalLocation");
                json.writeObjectPropertyStart("artifactLocation");
                json.writeStringProperty("uri", address(finding.span().file().path()));
                json.writeEndObject();
                json.writeObjectPropertyStart("region");
                SourceFile file = finding.span().file();
                json.writeNumberProperty("startLine", finding.span().line());
                json.writeNumberProperty("startColumn", finding.span().column());
                json.writeNumberProperty("endLine", file.line(finding.span().end()));
                json.writeNumberProperty("endColumn", file.column(finding.span().end()));
                json.writeEndObject();
                json.writeEndObject();
                json.writeEndObject();
                json.writeEndArray();
                json.writeObjectPropertyStart("partialFingerprints");
                json.writeStringProperty("fact/v1", fingerprint(finding));
                json.writeEndObject();
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private static String level(Severity severity) {
        return switch (severity) {
            case ERROR -> "error";
            case WARNING -> "warning";
            case INFO -> "note";
        };
    }

    /** RFC 3986: what is no unreserved character or slash is written as its UTF-8 bytes in percent form. */
    private static String address(String path) {
        StringBuilder out = new StringBuilder();
        for (byte b : path.getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (b & 0xff);
            boolean plain = c < 0x80 && (Character.isLetterOrDigit(c) || "-._~/".indexOf(c) >= 0);
            out.append(plain ? String.valueOf(c) : "%" + HexFormat.of().withUpperCase().toHexDigits(b));
        }
        return out.toString();
    }

    /** The file, the rule and the words, but not the line: moving a fact is not a new finding. */
    private static String fingerprint(Finding finding) {
        return Sha256.of((finding.span().file().path() + "\n" + finding.rule() + "\n" + finding.message())
                .getBytes(StandardCharsets.UTF_8)).substring(0, 32);
    }
}
