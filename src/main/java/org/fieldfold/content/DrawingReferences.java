package org.fieldfold.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.xml.sax.Attributes;

/** The parts of a drawing that are called by their ids, and those that call them. */
final class DrawingReferences {
    private static final Set<String> SHAPES = Set.of("path", "circle", "ellipse", "line", "polyline", "polygon",
            "rect");
    private static final Set<String> DRAWN = Set.of("path", "circle", "ellipse", "line", "polyline", "polygon",
            "rect", "g", "use");
    private static final Set<String> WORDS = Set.of("title", "desc");
    private static final Set<String> GROUPS = Set.of("svg", "g", "defs");
    private static final Pattern ADDRESS =
            Pattern.compile("(?:url\\(\\s*['\"]?)?#([A-Za-z_][\\w.-]*+)['\"]?\\s*\\)?");

    /**
     * One part that another needs.
     *
     * @param kinds of element that it may be
     * @param what the same in words
     */
    private record Call(String id, Set<String> kinds, String what) {
    }

    private final Map<String, String> elements = new HashMap<>();
    private final Set<String> twice = new HashSet<>();
    private final List<Call> calls = new ArrayList<>();

    /** What an element may not have in it, if it is so. */
    static Optional<String> misplaced(String element, String parent) {
        boolean known = DrawingRules.ELEMENTS.contains(parent);
        boolean inClip = parent.equals("clipPath");
        boolean fits = WORDS.contains(element) ? !WORDS.contains(parent)
                : GROUPS.contains(parent) || inClip && (SHAPES.contains(element) || element.equals("use"));
        return fits || !known ? Optional.empty() : Optional.of(inClip ? "expected shapes alone in a clipPath, found '"
                + element + "'" : "expected shapes side by side in groups, found '" + element + "' inside '"
                + parent + "'");
    }

    /** The part of the same drawing that an attribute calls; empty when it calls none. */
    static String called(String attribute, String value) {
        Matcher address = ADDRESS.matcher(value.strip());
        boolean calls = attribute.endsWith("href") || attribute.equals("clip-path");
        return calls && address.matches() ? address.group(1) : "";
    }

    void open(String element, String parent, Attributes attributes) {
        for (int i = 0; i < attributes.getLength(); i++) {
            String name = attributes.getQName(i);
            String value = attributes.getValue(i);
            if (name.equals("id") && elements.putIfAbsent(value, element) != null) {
                twice.add(value);
            } else if (name.equals("clip-path") && !called(name, value).isEmpty()) {
                calls.add(new Call(called(name, value), Set.of("clipPath"), "a clipPath"));
            } else if (element.equals("use") && !called(name, value).isEmpty()) {
                calls.add(parent.equals("clipPath") ? new Call(called(name, value), SHAPES, "a shape")
                        : new Call(called(name, value), DRAWN, "a shape or group"));
            }
        }
    }

    /** An id that is called and leads to nothing of its kind, or to two things. */
    record Astray(String id, String message, String hint) {
    }

    /** Each once. */
    List<Astray> astray() {
        List<Astray> astray = new ArrayList<>();
        Set<String> said = new HashSet<>();
        for (Call call : calls) {
            String found = elements.getOrDefault(call.id(), "");
            if (!call.kinds().contains(found) && said.add(call.id())) {
                astray.add(new Astray(call.id(), "expected " + call.what() + " of the id '"
                        + ScalarReading.cut(call.id()) + "', found " + (found.isEmpty() ? "none" : "'" + found + "'"),
                        "give the part that is meant this id, or take the reference out"));
            } else if (twice.contains(call.id()) && said.add(call.id())) {
                astray.add(new Astray(call.id(), "expected one part of the id '" + ScalarReading.cut(call.id())
                        + "', found several", "give each an id of its own"));
            }
        }
        return astray;
    }
}
