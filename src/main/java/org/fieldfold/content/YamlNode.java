package org.fieldfold.content;

import java.util.List;
import org.fieldfold.source.Span;

/** A piece of a YAML file, with its place. Spans of lists and maps run to the end of what is in them. */
sealed interface YamlNode {
    Span span();

    /** How a scalar is written. */
    enum Style { PLAIN, QUOTED, BLOCK }

    /** A single value, as written, without quotes. */
    record Scalar(String value, Style style, Span span) implements YamlNode {
        /** Whether nothing stands there, or the YAML words for nothing. */
        boolean isNothing() {
            return style == Style.PLAIN && (value.isEmpty() || value.equals("~") || value.equals("null")
                    || value.equals("Null") || value.equals("NULL"));
        }
    }

    /** A list. */
    record Items(List<YamlNode> items, Span span) implements YamlNode {
    }

    /** A map: its pairs in the order of the file, repeated keys included. */
    record Pairs(List<Pair> pairs, Span span) implements YamlNode {
    }

    /** One key with its value. */
    record Pair(Scalar key, YamlNode value) {
    }

    /** Something that is not read; its finding has been given. */
    record Refused(Span span) implements YamlNode {
    }
}
