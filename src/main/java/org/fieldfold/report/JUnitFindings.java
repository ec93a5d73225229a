package org.fieldfold.report;

import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;

/** Findings as JUnit XML: a suite, a case a file, a failure where an error stands; the rest as its output. */
final class JUnitFindings {
    private JUnitFindings() {
    }

    static String write(List<Finding> findings) {
        Map<String, List<Finding>> byFile = findings.stream().collect(Collectors.groupingBy(
                finding -> finding.span().file().path(), TreeMap::new, Collectors.toList()));
        long failed = byFile.values().stream().filter(JUnitFindings::hasError).count();
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newInstance().createXMLStreamWriter(text);
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeCharacters("\n");
            xml.writeStartElement("testsuite");
            xml.writeAttribute("name", "fieldfold check");
            xml.writeAttribute("tests", String.valueOf(byFile.size()));
            xml.writeAttribute("failures", String.valueOf(failed));
            for (Map.Entry<String, List<Finding>> file : byFile.entrySet()) {
                xml.writeCharacters("\n  ");
                xml.writeStartElement("testcase");
                xml.writeAttribute("classname", "content");
                xml.writeAttribute("name", file.getKey());
                boolean error = hasError(file.getValue());
                xml.writeCharacters("\n    ");
                xml.writeStartElement(error ? "failure" : "system-out");
                if (error) {
                    xml.writeAttribute("message", file.getValue().size() + " findings");
                }
                xml.writeCharacters(legal(FindingFormat.TEXT.write(file.getValue(), false)));
                xml.writeEndElement();
                xml.writeCharacters("\n  ");
                xml.writeEndElement();
            }
            xml.writeCharacters("\n");
            xml.writeEndElement();
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException("writing to memory", impossible);
        }
        return text.append('\n').toString();
    }

    private static boolean hasError(List<Finding> findings) {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    }

    /** What XML 1.0 (2.2, production 2) cannot hold is shown as a replacement character. */
    private static String legal(String text) {
        return text.codePoints().map(c -> c == 9 || c == 10 || c == 13 || c >= 0x20 && c <= 0xD7FF
                || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000 ? c : 0xFFFD)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
