package org.fieldfold.handbook;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A page as the JDK's own XML parser reads it: what we write is well-formed as XML too. */
final class Html {
    private Html() {
    }

    static Document parse(HandbookFile file) {
        String text = new String(file.bytes(), StandardCharsets.UTF_8).replaceFirst("^<!DOCTYPE html>", "");
        try {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                    .parse(new InputSource(new StringReader(text)));
        } catch (IOException | SAXException | ParserConfigurationException broken) {
            throw new AssertionError(file.path() + ": " + broken.getMessage(), broken);
        }
    }

    /** All elements below, in document order. */
    static List<Element> all(Node node, Predicate<Element> wanted) {
        List<Element> found = new ArrayList<>();
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element) {
                if (wanted.test(element)) {
                    found.add(element);
                }
                found.addAll(all(element, wanted));
            }
        }
        return found;
    }

    static List<Element> all(Node node, String tag) {
        return all(node, element -> element.getTagName().equals(tag));
    }

    static List<Element> classed(Node node, String name) {
        return all(node, element -> List.of(element.getAttribute("class").split(" ")).contains(name));
    }
}
