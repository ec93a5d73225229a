package org.fieldfold.handbook;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A drawing as it may stand between double quotes in a style sheet inside a page: percent-encoded where it
 * must be, and without what a browser does not paint. Read once from front to back, as there are many
 * drawings.
 */
final class TerseSvg {
    private final String svg;
    private final StringBuilder out;
    private final Map<String, String> ids = new HashMap<>();
    private final Optional<DrawingGrid> grid;
    private int at;

    TerseSvg(String svg) {
        this.svg = svg.strip();
        this.out = new StringBuilder(svg.length() + svg.length() / 8);
        this.grid = DrawingGrid.of(this.svg);
    }

    String encoded() {
        while (at < svg.length()) {
            char sign = svg.charAt(at);
            if (svg.startsWith("<title>", at) && svg.indexOf("</title>", at) > 0) {
                at = svg.indexOf("</title>", at) + "</title>".length();
                skipBlanksBetweenTags();
            } else if (sign == '"' || sign == '\'') {
                value(sign);
            } else if (sign == '>') {
                out.append('>');
                at++;
                skipBlanksBetweenTags();
            } else if (sign == '<' && beginsTag()) {
                out.append(sign);
                at++;
            } else {
                put(sign);
                at++;
            }
        }
        return out.toString();
    }

    /** A tag's beginning may stand as it is, but for those that mean something to the page around it. */
    private boolean beginsTag() {
        int name = svg.startsWith("/", at + 1) ? at + 2 : at + 1;
        return name < svg.length() && Character.isLetter(svg.charAt(name))
                && !svg.regionMatches(true, name, "style", 0, "style".length())
                && !svg.regionMatches(true, name, "script", 0, "script".length());
    }

    private void skipBlanksBetweenTags() {
        int next = at;
        while (next < svg.length() && svg.charAt(next) <= ' ') {
            next++;
        }
        if (next < svg.length() && svg.charAt(next) == '<') {
            at = next;
        }
    }

    /** An attribute's value, in single quotes whatever it was written in. */
    private void value(char quote) {
        int end = svg.indexOf(quote, at + 1);
        if (end < 0) {
            end = svg.length();
        }
        String name = name(at);
        String drawn = svg.substring(at + 1, end);
        String value = grid.map(found -> found.value(name, drawn)).orElse(drawn);
        out.append('\'');
        if (name.equals("d")) {
            grid.flatMap(found -> found.path(drawn)).ifPresentOrElse(this::put, () -> path(drawn));
        } else if (name.equals("id")) {
            put(shortId(value));
        } else if (value.startsWith("#") && name.endsWith("href")) {
            put("#" + shortId(value.substring(1)));
        } else if (value.startsWith("url(#") && value.endsWith(")")) {
            put("url(#" + shortId(value.substring(5, value.length() - 1)) + ")");
        } else {
            put(value.indexOf('\'') >= 0 ? value.replace("'", "&#39;") : value.equals("#000") ? "black"
                    : value.equals("#fff") ? "white"
                    : value.startsWith("0.") ? value.substring(1) : value);
        }
        out.append('\'');
        at = Math.min(svg.length(), end + 1);
    }

    /** The name of the attribute whose quote stands at {@code quote}. */
    private String name(int quote) {
        int end = quote;
        while (end > 0 && (svg.charAt(end - 1) == '=' || svg.charAt(end - 1) == ' ')) {
            end--;
        }
        int start = end;
        while (start > 0 && svg.charAt(start - 1) > ' ') {
            start--;
        }
        return svg.substring(start, end);
    }

    /** Ids are there for mirrored halves and clips only: short ones paint the same. */
    private String shortId(String id) {
        return ids.computeIfAbsent(id, key -> "_" + ids.size());
    }

    /** Path data without the blanks and noughts that its grammar does not need (SVG 1.1, 8.3.9). */
    private void path(String data) {
        boolean point = false;
        for (int i = 0; i < data.length(); i++) {
            char sign = data.charAt(i);
            char before = i == 0 ? 'M' : data.charAt(i - 1);
            boolean digit = sign >= '0' && sign <= '9';
            if (sign <= ' ' || sign == ',') {
                if (!isBlank(before) && needed(before, next(data, i), point)) {
                    out.append(' ');
                }
                point = false;
            } else if (sign == '0' && !isDigit(before) && before != '.' && i + 2 < data.length()
                    && data.charAt(i + 1) == '.' && isDigit(data.charAt(i + 2))) {
                continue;
            } else {
                point = sign == '.' || digit && point;
                put(sign);
            }
        }
    }

    private static boolean isBlank(char sign) {
        return sign <= ' ' || sign == ',';
    }

    private static boolean isDigit(char sign) {
        return sign >= '0' && sign <= '9';
    }

    /** What stands behind a blank, with the nought gone that would go. */
    private static String next(String data, int blank) {
        int i = blank;
        while (i < data.length() && isBlank(data.charAt(i))) {
            i++;
        }
        return data.startsWith("0.", i) ? "." : i < data.length() ? data.substring(i, i + 1) : "";
    }

    private static boolean needed(char before, String next, boolean point) {
        if (next.isEmpty() || Character.isLetter(before)) {
            return false;
        }
        char sign = next.charAt(0);
        return !(Character.isLetter(sign) || sign == '-' || sign == '.' && point);
    }

    private void put(String text) {
        for (int i = 0; i < text.length(); i++) {
            put(text.charAt(i));
        }
    }

    private void put(char sign) {
        if (sign > 0x1F && sign < 0x7F && "\"#%<]\\".indexOf(sign) < 0) {
            out.append(sign);
        } else if (sign < 0x80) {
            percent(sign);
        } else if (Character.isSurrogate(sign)) {
            out.append("%ef%bf%bd");
        } else {
            for (byte unit : String.valueOf(sign).getBytes(StandardCharsets.UTF_8)) {
                percent(unit & 0xFF);
            }
        }
    }

    private void percent(int unit) {
        out.append('%').append(Character.forDigit(unit >> 4, 16)).append(Character.forDigit(unit & 15, 16));
    }
}
