package org.fieldfold.pdf;

import java.io.ByteArrayInputStream;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads the size of a drawing and refuses what does not come out on paper: text would take a font of the
 * machine, patterns and filters would become pixels, masks would be passed over in silence.
 */
final class SvgReading {
    private static final Set<String> DRAWN = Set.of("svg", "g", "defs", "title", "desc", "metadata", "path",
            "line",
            "polyline", "polygon", "rect", "circle", "ellipse", "use", "symbol", "clipPath", "linearGradient",
            "radialGradient", "stop", "style");
    private static final Set<String> REFUSED_ATTRIBUTES = Set.of("mask", "filter");

    /** In the drawing's own units. */
    record Size(double width, double height) {}

    private final String id;
    private Optional<Size> size = Optional.empty();

    private SvgReading(String id) {
        this.id = id;
    }

    /** @throws IllegalArgumentException naming the figure, what was found, and the line */
    static Size read(String id, byte[] content) {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        SvgReading reading = new SvgReading(id);
        try {
            XMLStreamReader xml = factory.createXMLStreamReader(new ByteArrayInputStream(content));
            int skipped = 0;
            while (xml.hasNext()) {
                int event = xml.next();
                if (event == XMLStreamConstants.START_ELEMENT) {
                    skipped = skipped > 0 || xml.getLocalName().equals("metadata") ? skipped + 1 : 0;
                    if (skipped == 0) {
                        reading.element(xml);
                    }
                } else if (event == XMLStreamConstants.END_ELEMENT && skipped > 0) {
                    skipped--;
                }
            }
        } catch (XMLStreamException e) {
            throw new IllegalArgumentException("figure " + id
                    + ": expected SVG, found something that does not read"
                    + " as XML: " + e.getMessage(), e);
        }
        return reading.size.orElseThrow();
    }

    private void element(XMLStreamReader xml) {
        String name = xml.getLocalName();
        if (size.isEmpty()) {
            if (!name.equals("svg")) {
                throw refused(xml, "expected <svg>, found <" + name + ">");
            }
            size = Optional.of(size(xml));
        }
        if (!DRAWN.contains(name)) {
            throw refused(xml, "found <" + name + ">, which is not printed; draw it as paths");
        }
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            String attribute = xml.getAttributeLocalName(i);
            String value = xml.getAttributeValue(i).strip();
            if (REFUSED_ATTRIBUTES.contains(attribute) && !value.equals("none")) {
                throw refused(xml, "found " + attribute + "=\"" + value + "\", which is not printed");
            }
            if (attribute.equals("href") && !value.startsWith("#")) {
                throw refused(xml, "expected a reference inside the drawing, found href=\"" + value + "\"");
            }
        }
    }

    private Size size(XMLStreamReader xml) {
        String viewBox = xml.getAttributeValue(null, "viewBox");
        String[] numbers = viewBox == null
                ? new String[] {"0", "0", plain(xml, "width"), plain(xml, "height")}
                : viewBox.strip().split("[\\s,]+");
        try {
            double width = Double.parseDouble(numbers[2]);
            double height = Double.parseDouble(numbers[3]);
            if (width > 0 && height > 0 && width / height < 1000 && height / width < 1000) {
                return new Size(width, height);
            }
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
            // said below, with what was found
        }
        throw refused(xml, "expected viewBox=\"0 0 width height\", found " + String.join(" ", numbers));
    }

    private static String plain(XMLStreamReader xml, String attribute) {
        String value = xml.getAttributeValue(null, attribute);
        return value == null ? "nothing" : value.strip().replaceFirst("px$", "");
    }

    private IllegalArgumentException refused(XMLStreamReader xml, String what) {
        return new IllegalArgumentException("figure " + id + ", line " + xml.getLocation().getLineNumber()
                + ": " + what);
    }
}
