package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** What the jar is made of, as its bill of materials (CycloneDX) says: known, fixed, and free to be given on. */
class ReleaseTest {
    /** SPDX ids of licences under which a jar may carry a work on, whatever its own licence. */
    private static final Set<String> FREE = Set.of("Apache-2.0", "MIT", "BSD-2-Clause", "BSD-3-Clause");

    private static List<JsonNode> components() throws IOException {
        Path bill = Path.of("target/fieldfold-bom.json");
        assertTrue(Files.exists(bill), "expected " + bill + "; 'mvn process-classes' writes it");
        JsonNode all = new ObjectMapper().readTree(Files.readString(bill));
        assertEquals("CycloneDX", all.get("bomFormat").asString());
        List<JsonNode> components = new ArrayList<>();
        all.get("components").forEach(components::add);
        return components;
    }

    @Test
    void everythingInTheJarMayBeGivenOn() throws IOException {
        List<String> bound = new ArrayList<>();
        for (JsonNode component : components()) {
            boolean free = false;
            for (JsonNode licence : component.path("licenses")) {
                // of several licences, one may be chosen
                free |= FREE.contains(licence.path("license").path("id").asString(""));
            }
            if (!free) {
                bound.add(component.get("name").asString() + " " + component.path("licenses"));
            }
        }
        assertEquals(List.of(), bound);
    }

    @Test
    void everythingInTheJarIsOnTheBillWithItsHash() throws Exception {
        Set<String> listed = new TreeSet<>();
        for (JsonNode component : components()) {
            listed.add(component.get("group").asString() + ":" + component.get("name").asString());
            boolean hashed = false;
            for (JsonNode hash : component.path("hashes")) {
                hashed |= hash.get("alg").asString().equals("SHA-256") && hash.get("content").asString().length() == 64;
            }
            assertTrue(hashed, component.toString());
        }
        for (Element dependency : elements("dependency")) {
            if (!text(dependency, "scope").equals("test")) {
                String name = text(dependency, "groupId") + ":" + text(dependency, "artifactId");
                assertTrue(listed.contains(name), name + " is in the jar");
            }
        }
    }

    /** A version that moves would make another jar of the same sources. */
    @Test
    void versionsAreFixed() throws Exception {
        List<Element> named = new ArrayList<>(elements("dependency"));
        named.addAll(elements("plugin"));
        named.addAll(elements("artifactItem"));
        assertTrue(named.size() > 30);
        for (Element one : named) {
            assertTrue(text(one, "version").matches("[0-9][0-9A-Za-z.-]*|[$][{]jackson.version}")
                    && !text(one, "version").endsWith("SNAPSHOT"), text(one, "artifactId"));
        }
        for (JsonNode component : components()) {
            assertTrue(component.get("version").asString().matches("[0-9][0-9A-Za-z.-]*"), component.toString());
        }
    }

    private static List<Element> elements(String name) throws Exception {
        NodeList found = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(Path.of("pom.xml").toFile())
                .getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    private static String text(Element parent, String name) {
        NodeList children = parent.getChildNodes();
        for (int i = 0; i < children.getLength(); i++) {
            if (children.item(i).getNodeName().equals(name)) {
                return children.item(i).getTextContent().strip();
            }
        }
        return "";
    }
}
