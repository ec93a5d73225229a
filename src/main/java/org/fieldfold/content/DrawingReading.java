package org.fieldfold.content;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/** Reads an SVG drawing only to see that it is made of shapes, and leads nowhere outside itself. */
final class DrawingReading extends DefaultHandler {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final Pattern DECLARED =
            Pattern.compile("^<\\?xml\\s[^>]{0,200}?encoding\\s*=\\s*[\"']([^\"'>]{0,80})");
    private static final int DEEPEST = 64;
    private static final int MOST_FINDINGS = 50;

    /** Made once a thread: it costs more than reading a drawing. */
    private static final ThreadLocal<XMLReader> PARSER = ThreadLocal.withInitial(DrawingReading::parser);

    private final SourceFile file;
    private final List<Finding> findings = new ArrayList<>();
    private final DrawingSize size = new DrawingSize();
    private final DrawingReferences references = new DrawingReferences();
    private final Deque<String> open = new ArrayDeque<>();
    private Locator locator;

    private DrawingReading(SourceFile file) {
        this.file = file;
    }

    static List<Finding> check(SourceFile file) {
        DrawingReading reading = new DrawingReading(file);
        try {
            XMLReader xml = PARSER.get();
            xml.setContentHandler(reading);
            xml.setErrorHandler(reading);
            xml.setEntityResolver((publicId, systemId) -> new InputSource(new StringReader("")));
            xml.parse(new InputSource(new StringReader(file.text())));
            reading.sizes();
            reading.references();
            reading.encoding();
        } catch (SAXParseException e) {
            reading.unreadable(e);
        } catch (SAXException e) {
            // ended early by a finding of our own
            if (reading.findings.isEmpty()) {
                reading.report(Span.startOf(file), "expected a drawing, found " + e.getMessage(),
                        "save it as plain SVG");
            }
        } catch (IOException e) {
            throw new IllegalStateException("text in memory can be parsed", e);
        }
        return reading.findings;
    }

    private static XMLReader parser() {
        try {
            SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
            factory.setNamespaceAware(true);
            factory.setXIncludeAware(false);
            return factory.newSAXParser().getXMLReader();
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException("the JDK's own XML parser can be hardened", e);
        }
    }

    @Override
    public void setDocumentLocator(Locator given) {
        this.locator = given;
    }

    @Override
    public void startElement(String uri, String local, String name,
            Attributes attributes) throws SAXException {
        // the place is worked out only for a finding: drawings have tens of thousands of tags
        Supplier<Span> place = () -> tag(name);
        if (open.isEmpty() && !(local.equals("svg") && uri.equals(SVG))) {
            report(place.get(), "expected the element svg in the namespace " + SVG + ", found '" + name + "'",
                    "begin the drawing with <svg xmlns=\"" + SVG + "\" viewBox=\"…\">");
        } else if (open.isEmpty()) {
            root(place, attributes);
        } else if (!DrawingRules.ELEMENTS.contains(local) || !uri.equals(SVG) || local.equals("svg")) {
            report(place.get(), "expected shapes (g, path, circle and so on), found the element '" + name
                    + "'",
                    local.equals("text") ? "turn the text into paths, or put it into the caption"
                            : "take it out, or draw it as shapes");
        } else {
            DrawingReferences.misplaced(local, open.peek()).ifPresent(slip ->
                    report(place.get(), slip, "take it out of there"));
        }
        for (int i = 0; i < attributes.getLength(); i++) {
            attribute(place, attributes.getQName(i), attributes.getValue(i));
        }
        size.open(attributes);
        references.open(local, open.isEmpty() ? "" : open.peek(), attributes);
        open.push(local);
        if (findings.size() > MOST_FINDINGS) {
            throw new SAXException("too many findings");
        }
        if (open.size() > DEEPEST) {
            report(place.get(), "expected at most " + DEEPEST + " groups inside each other, found more",
                    "ungroup the drawing");
            throw new SAXException("too many groups");
        }
    }

    private void root(Supplier<Span> place, Attributes attributes) {
        String box = attributes.getValue("viewBox");
        Optional<String> wrong = DrawingValues.expectedBox(box == null ? "" : box);
        if (wrong.isPresent()) {
            report(place.get(), "expected " + wrong.get() + ", found " + (box == null ? "none" : "'"
                    + ScalarReading.cut(box) + "'"), "write viewBox=\"0 0 width height\" in the svg element");
            return;
        }
        DrawingValues.expectedSides(Optional.ofNullable(attributes.getValue("width")),
                Optional.ofNullable(attributes.getValue("height")), box).ifPresent(slip -> report(place.get(),
                "expected " + slip + ", found '" + ScalarReading.cut(attributes.getValue("width") + "' and '"
                        + attributes.getValue("height")) + "'", "take width and height out of the svg element"));
    }

    private void attribute(Supplier<Span> place, String name, String value) {
        unseen(value);
        if (!DrawingRules.isAttribute(name)) {
            report(within(place.get(), name), "expected attributes of shapes, found '" + name + "'",
                    name.startsWith("on") ? "take it out: nothing in a drawing runs"
                            : name.equals("style")
                                    ? "write each property as an attribute: fill=\"…\" stroke=\"…\""
                            : "take it out");
        } else if (!DrawingRules.isLocal(name, value)) {
            report(within(place.get(), name), "expected a reference to a part of this drawing, found '"
                    + ScalarReading.cut(value) + "'", "refer to an id of this file as '#id', or take it out");
        } else if (!open.isEmpty()) {
            DrawingValues.expected(name, value).ifPresent(expected -> report(within(place.get(), name), "expected "
                    + expected + ", found '" + ScalarReading.cut(value) + "'", "write it so, or take it out"));
        }
    }

    @Override
    public void characters(char[] signs, int from, int length) {
        unseen(new String(signs, from, length));
    }

    /** A character reference must not bring in what may not be written. */
    private void unseen(String text) {
        UnseenCharacters.next(text, 0).ifPresent(at -> report(here(), "expected text, found "
                + UnseenCharacters.named(text.codePointAt(at)), "delete it; it may be written as '&#…;'"));
    }

    @Override
    public void endElement(String uri, String local, String name) {
        open.pop();
        size.close();
    }

    @Override
    public void processingInstruction(String target, String data) {
        report(Span.startOf(file), "expected shapes, found the instruction '" + ScalarReading.cut(target)
                + "'",
                "take out what stands between <? and ?>");
    }

    private void references() {
        for (DrawingReferences.Astray astray : references.astray()) {
            int at = Math.max(0, file.text().indexOf("#" + astray.id()));
            report(new Span(file, at, at), astray.message(), astray.hint());
        }
    }

    private void sizes() {
        size.problem().ifPresent(problem -> report(Span.startOf(file), problem, "write the shapes out once"));
    }

    /** The press and the handbook read the bytes as they declare themselves; here they were read as UTF-8. */
    private void encoding() {
        Matcher declared = DECLARED.matcher(file.text());
        if (declared.find() && !declared.group(1).equalsIgnoreCase("UTF-8")) {
            report(new Span(file, declared.start(1), declared.end(1)), "expected a drawing in UTF-8, found one that "
                    + "declares '" + ScalarReading.cut(declared.group(1)) + "'", "save it as UTF-8");
        }
    }

    private void unreadable(SAXParseException e) {
        int line = Math.max(1, e.getLineNumber());
        int at = Math.min(file.text().length(), file.lineStart(line) + Math.max(0, e.getColumnNumber() - 1));
        boolean doctype = e.getMessage() != null && e.getMessage().contains("DOCTYPE");
        int start = doctype ? Math.max(0, file.text().indexOf("<!DOCTYPE")) : at;
        report(new Span(file, start, start), doctype ? "expected no document type declaration, found one"
                : "expected well-formed SVG, found something that is none: " + e.getMessage()
                        .replaceAll("\\.$", ""),
                doctype ? "delete the line that begins with <!DOCTYPE"
                        : "mend the tag here, or save the drawing again");
    }

    /** The parser stands behind the tag; the tag's own place is where it opens. */
    private Span tag(String name) {
        int behind = here().start();
        int at = file.text().lastIndexOf("<" + name, behind);
        return at < 0 ? new Span(file, behind, behind) : new Span(file, at, Math.max(at, behind));
    }

    private Span here() {
        int at = Math.min(file.text().length(), file.lineStart(locator.getLineNumber())
                + Math.max(0, locator.getColumnNumber() - 1));
        return new Span(file, at, at);
    }

    private Span within(Span tag, String attribute) {
        String text = file.text().substring(tag.start(), tag.end());
        Matcher found = Pattern.compile("\\s" + Pattern.quote(attribute)
                + "\\s*=").matcher(text);
        int at = found.find() ? found.start() + 1 : 0;
        return new Span(file, tag.start() + at, tag.start() + at + (at == 0 ? 0 : attribute.length()));
    }

    private void report(Span place, String message, String hint) {
        findings.add(FormRule.SVG_NOT_PRINTABLE.at(place, message, hint));
    }
}
