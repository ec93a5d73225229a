package org.fieldfold.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The ways in which a value can be written in YAML, the one that is most like what stood there first. */
final class WrittenValue {
    private WrittenValue() {
    }

    /** For a place where nothing stood. */
    static List<String> fresh(String value) {
        List<String> ways = new ArrayList<>();
        if (isOneLine(value)) {
            ways.add(value);
        }
        ways.add(doubleQuoted(value));
        return ways;
    }

    /** For the place of another value. */
    static List<String> inPlaceOf(YamlNode.Scalar old, String value) {
        String text = old.span().file().text();
        String former = text.substring(old.span().start(), old.span().end());
        List<String> ways = new ArrayList<>();
        if (old.style() == YamlNode.Style.BLOCK) {
            block(former, value).ifPresent(ways::add);
        }
        if (former.startsWith("'") && isOneLine(value)) {
            ways.add("'" + value.replace("'", "''") + "'");
        }
        if (former.startsWith("\"")) {
            ways.add(doubleQuoted(value));
        }
        fresh(value).forEach(ways::add);
        if (former.isEmpty()) {
            fresh(value).forEach(way -> ways.add(" " + way));
        }
        return ways;
    }

    private static boolean isOneLine(String value) {
        return !value.isEmpty() && value.equals(value.strip())
                && value.chars().noneMatch(c -> c < ' ' || c == 0x85 || c == 0x2028 || c == 0x2029);
    }

    /** The same heading, comment included, and the lines at the same indentation. */
    private static Optional<String> block(String former, String value) {
        String[] lines = former.split("\r\n|\n|\r", -1);
        String first = "";
        for (int i = 1; i < lines.length && first.isBlank(); i++) {
            first = lines[i];
        }
        String indent = first.substring(0, first.length() - first.stripLeading().length());
        if (indent.isEmpty() || value.isBlank()) {
            return Optional.empty();
        }
        String end = former.contains("\r\n") ? "\r\n" : former.contains("\n") ? "\n" : "\r";
        StringBuilder out = new StringBuilder("|").append(lines[0].substring(1));
        for (String line : value.stripTrailing().split("\n", -1)) {
            out.append(end).append(line.isEmpty() ? "" : indent + line);
        }
        return Optional.of(out.toString());
    }

    static String doubleQuoted(String value) {
        StringBuilder out = new StringBuilder("\"");
        value.codePoints().forEach(c -> {
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> {
                    if (c < ' ' || c >= 0x7F && c < 0xA0 || c == 0x2028 || c == 0x2029 || c == 0xFEFF) {
                        out.append("\\u%04X".formatted(c));
                    } else {
                        out.appendCodePoint(c);
                    }
                }
            }
        });
        return out.append('"').toString();
    }
}
