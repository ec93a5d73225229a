package org.fieldfold.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/** What is said about keys, ids and the space behind a colon. */
final class KeySlips {
    private KeySlips() {
    }

    /** Nothing behind a colon or hyphen; or only what YAML takes for a comment. */
    static Finding nothing(YamlNode.Scalar scalar, String expected) {
        String text = scalar.span().file().text();
        int at = scalar.span().end();
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
        if (scalar.value().isEmpty() && at + 1 < text.length() && text.charAt(at) == '#'
                && !Character.isWhitespace(text.charAt(at + 1))) {
            return YamlSlips.swallowed(toLineEnd(scalar.span(), at));
        }
        return FormRule.EMPTY_VALUE.at(scalar.span(), "expected " + expected + ", found "
                + (scalar.value().isEmpty() ? "nothing" : "'" + scalar.value()
                        + "', which is YAML for nothing"),
                "write it, or take the key out");
    }

    static Span toLineEnd(Span from, int at) {
        String text = from.file().text();
        int end = at;
        while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        return new Span(from.file(), at, end);
    }

    /** Whether a map stands there only because a text has a colon: '- Sow late: after June'. */
    static boolean isColon(YamlNode.Pairs pairs) {
        return pairs.pairs().size() == 1 && pairs.pairs().get(0).key().style() == YamlNode.Style.PLAIN
                && !pairs.pairs().get(0).key().value().matches("[a-z][a-z0-9-]*");
    }

    static Finding colon(YamlNode.Pairs pairs) {
        return FormRule.UNQUOTED_COLON.at(toLineEnd(pairs.span(), pairs.span().start()),
                "expected a text, found a colon and a space in it, which make it a key and a value",
                "put the whole text in double quotes");
    }

    static Finding unknownKey(YamlNode.Pair pair, List<String> known, Set<String> besides) {
        YamlNode.Scalar key = pair.key();
        if (isRestOfText(pair)) {
            return FormRule.UNQUOTED_COMMA.at(key.span(),
                    "expected a key and a colon behind the comma, found "
                    + ScalarReading.shown(key) + " alone",
                            "put the whole text before and behind the comma in double quotes");
        }
        List<String> all = new ArrayList<>(besides);
        all.addAll(known);
        return FormRule.UNKNOWN_KEY.at(key.span(), "expected one of the keys " + String.join(", ", all)
                + ", found " + ScalarReading.shown(key), key.value().equals("id")
                        ? "the file's name is its id: take the key out"
                : Nearest.hint(key.value(), all, "take it out, or write the key that was meant"));
    }

    /** Whether what stands for a key is the end of a text with a comma: '{name: tubers begin, buds}'. */
    private static boolean isRestOfText(YamlNode.Pair pair) {
        return pair.value() instanceof YamlNode.Scalar nothing && nothing.value().isEmpty()
                && nothing.style() == YamlNode.Style.PLAIN && nothing.span().start() <= pair.key().span()
                        .end();
    }

    static Finding badId(Span at, String found) {
        return FormRule.BAD_ID.at(at,
                "expected an id of lower-case letters, digits and hyphens, at most 64, found '"
                + ScalarReading.cut(found) + "'", "write it as in 'colorado-potato-beetle'");
    }
}
