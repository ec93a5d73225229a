package org.fieldfold.content;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.fieldfold.source.SourceFile;

/** The text of a map in its file, for adding a key to it and for taking one out. */
final class MapText {
    private final String text;
    private final YamlNode.Pairs map;
    private final boolean flow;

    MapText(SourceFile file, YamlNode.Pairs map) {
        this.text = file.text();
        this.map = map;
        this.flow = text.startsWith("{", map.span().start());
    }

    /** The whole text with a key added, given its value as written: at the end of the map, or else first. */
    List<Function<String, String>> ways(String key) {
        if (flow) {
            int end = map.pairs().isEmpty() ? map.span().start() + 1 : lastEnd();
            return List.of(value -> text.substring(0, end) + (map.pairs().isEmpty() ? "" : ", ") + key + ": "
                    + value + text.substring(end));
        }
        int first = map.pairs().get(0).key().span().start();
        String indent = " ".repeat(first - lineStart(first));
        int end = lineEnd(lastEnd());
        List<Function<String, String>> ways = new ArrayList<>();
        ways.add(value -> text.substring(0, end) + lineBreak() + indent + key + ": " + value
                + text.substring(end));
        ways.add(value -> text.substring(0, first) + key + ": " + value + lineBreak() + indent
                + text.substring(first));
        return ways;
    }

    /** The whole text without a key that is there. */
    String without(String key) {
        int place = 0;
        while (!map.pairs().get(place).key().value().equals(key)) {
            place++;
        }
        int from = map.pairs().get(place).key().span().start();
        int to = map.pairs().get(place).value().span().end();
        if (flow) {
            if (place > 0) {
                from = map.pairs().get(place - 1).value().span().end();
            } else if (map.pairs().size() > 1) {
                to = map.pairs().get(1).key().span().start();
            }
            return text.substring(0, from) + text.substring(to);
        }
        int start = lineStart(from);
        if (!text.substring(start, from).isBlank()) {
            // the first key of an item: what follows takes its place behind the hyphen
            int next = map.pairs().size() > 1 ? map.pairs().get(1).key().span().start() : to;
            return text.substring(0, from) + text.substring(next);
        }
        int end = lineEnd(to);
        int after = end + breakLength(end);
        return after == end && start > 0 ? text.substring(0, start - breakBefore(start))
                : text.substring(0, start) + text.substring(after);
    }

    /** Behind the value that stands last. */
    private int lastEnd() {
        return map.pairs().stream().mapToInt(pair -> Math.max(pair.value().span().end(),
                pair.key().span().end())).max().orElse(map.span().end());
    }

    private int lineStart(int offset) {
        int at = offset;
        while (at > 0 && !isBreak(text.charAt(at - 1))) {
            at--;
        }
        return at;
    }

    private int lineEnd(int offset) {
        int at = offset;
        while (at < text.length() && !isBreak(text.charAt(at))) {
            at++;
        }
        return at;
    }

    private int breakLength(int offset) {
        return text.startsWith("\r\n", offset) ? 2 : offset < text.length() ? 1 : 0;
    }

    private int breakBefore(int offset) {
        return offset >= 2 && text.startsWith("\r\n", offset - 2) ? 2 : 1;
    }

    /** As the file breaks its lines. */
    private String lineBreak() {
        return text.contains("\r\n") ? "\r\n" : text.contains("\n") || !text.contains("\r") ? "\n" : "\r";
    }

    private static boolean isBreak(char c) {
        return c == '\n' || c == '\r';
    }
}
