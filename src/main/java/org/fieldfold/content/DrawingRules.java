package org.fieldfold.content;

import java.util.Locale;
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
            "xlink:href", "role", "xml:space", "xml:lang", "lang", "pathLength", "vector-effect",
            "paint-order", "shape-rendering", "overflow");
    private static final Pattern LOCAL = Pattern.compile("#[A-Za-z_][\\w.-]*");
    private static final Pattern LOCAL_CLIP =
            Pattern.compile("none|url\\(\\s*['\"]?#[A-Za-z_][\\w.-]*['\"]?\\s*\\)");

    private DrawingRules() {
    }

    static boolean isAttribute(String name) {
        return ATTRIBUTES.contains(name) || name.startsWith("data-") || name.startsWith("aria-")
                || name.equals("xmlns") || name.startsWith("xmlns:");
    }

    /** Whether an attribute's value leads nowhere but to a part of the same drawing. */
    static boolean isLocal(String name, String value) {
        if (value.indexOf(':') < 0 && value.indexOf('(') < 0 && !name.endsWith("href")) {
            return true;
        }
        if (name.equals("href") || name.equals("xlink:href")) {
            return LOCAL.matcher(value.strip()).matches();
        }
        if (name.equals("clip-path")) {
            return LOCAL_CLIP.matcher(value.strip()).matches();
        }
        return name.startsWith("xmlns") || !value.contains("url(") && !value.contains("://")
                && !value.toLowerCase(Locale.ROOT).contains("javascript:");
    }
}
