package org.fieldfold.content;

import java.util.Set;
import java.util.regex.Pattern;

/**
 * Which elements and attributes of SVG are shapes that print: everything else is refused by not being named
 * here.
 */
final class DrawingRules {
    static final Set<String> ELEMENTS = Set.of("svg", "g", "path", "circle", "ellipse", "line", "polyline",
            "polygon", "rect", "defs", "use", "clipPath", "title", "desc");
    private static final Set<String> ATTRIBUTES = Set.of("id", "class", "viewBox", "width", "height",
            "version", "preserveAspectRatio", "x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "rx", "ry",
            "d", "points",
            "transform", "fill", "fill-rule", "fill-opacity", "stroke", "stroke-width", "stroke-linecap",
            "stroke-linejoin", "stroke-miterlimit", "stroke-dasharray", "stroke-dashoffset", "stroke-opacity",
            "opacity", "color", "display", "visibility", "clip-path", "clip-rule", "clipPathUnits", "href",
            "xlink:href", "role", "xml:space", "xml:lang", "lang", "paint-order", "shape-rendering", "overflow");
    /** What no program reads as an address. */
    private static final Set<String> FREE = Set.of("id", "class", "role");
    private static final Pattern MOVE = Pattern.compile(
            "(?:matrix|translate|scale|rotate|skewX|skewY)\\s*\\([-+0-9.eE\\s,]*+\\)[\\s,]*+");
    private static final Pattern COLOUR = Pattern.compile("(?:rgb|hsl)a?\\([-+0-9.%\\s,/]*+\\)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern LOCAL = Pattern.compile("#[A-Za-z_][\\w.-]*");
    private static final Pattern LOCAL_CLIP =
            Pattern.compile("none|url\\(\\s*['\"]?#[A-Za-z_][\\w.-]*['\"]?\\s*\\)");

    private DrawingRules() {
    }

    static boolean isAttribute(String name) {
        return ATTRIBUTES.contains(name) || name.startsWith("data-") || name.startsWith("aria-")
                || name.equals("xmlns") || name.startsWith("xmlns:");
    }

    /**
     * Whether an attribute's value leads nowhere but to a part of the same drawing: a value with a bracket is
     * one of a few known functions, and none has a sign by which an address or an escape is written.
     */
    static boolean isLocal(String name, String value) {
        if (name.equals("href") || name.equals("xlink:href")) {
            return LOCAL.matcher(value.strip()).matches();
        }
        if (FREE.contains(name) || name.startsWith("data-") || name.startsWith("aria-")
                || name.startsWith("xmlns")) {
            return true;
        }
        if (value.indexOf(':') >= 0 || value.indexOf('\\') >= 0 || value.indexOf('@') >= 0) {
            return false;
        }
        if (value.indexOf('(') < 0) {
            return true;
        }
        return name.equals("clip-path") ? LOCAL_CLIP.matcher(value.strip()).matches()
                : (name.equals("transform") ? MOVE : COLOUR).matcher(value).replaceAll("").isBlank();
    }
}
