package org.fieldfold.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.prose.Prose;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/** Texts of a record: what YAML does to them unseen, and their Markdown. */
final class TextReading {
    /** A link from a text to an entry. */
    record EntryLink(String entry, Span place) {
    }

    private final List<EntryLink> links = new ArrayList<>();

    List<EntryLink> links() {
        return links;
    }

    /** What is wrong with a text as it stands, if anything. */
    static Optional<Finding> slip(YamlNode.Scalar scalar) {
        if (scalar.value().isBlank()) {
            return Optional.of(FormRule.EMPTY_VALUE.at(scalar.span(), "expected a text, found nothing in it",
                    "write it, or take the key out"));
        }
        return scalar.style() == YamlNode.Style.PLAIN ? swallowed(scalar).or(() -> noBreakSpace(scalar))
                : Optional.empty();
    }

    /**
     * Behind a text, one space and '#' are taken for part of the text, as in {@code trap #3} or {@code lot # 7};
     * two spaces, '#' and a space are a comment.
     */
    private static Optional<Finding> swallowed(YamlNode.Scalar scalar) {
        String text = scalar.span().file().text();
        int end = scalar.span().end();
        int at = end;
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
        if (at == end || at >= text.length() || text.charAt(at) != '#') {
            return Optional.empty();
        }
        boolean comment = at - end >= 2 && (at + 1 == text.length() || Character.isWhitespace(text.charAt(at + 1)));
        return comment ? Optional.empty() : Optional.of(YamlSlips.swallowed(KeySlips.toLineEnd(scalar.span(), at)));
    }

    private static Optional<Finding> noBreakSpace(YamlNode.Scalar scalar) {
        String value = scalar.value();
        int start = scalar.span().start();
        int end = scalar.span().end();
        String text = scalar.span().file().text();
        int at = value.startsWith("\u00a0") ? start : value.endsWith("\u00a0") ? end - 1 : -1;
        if (at < 0) {
            int key = value.indexOf(":\u00a0");
            at = key > 0 && value.substring(0, key).matches("[a-z][a-z-]*") ? text.indexOf(":\u00a0", start) + 1 : -1;
        }
        return at < 0 ? Optional.empty()
                : Optional.of(YamlSlips.noBreakSpace(new Span(scalar.span().file(), at, at + 1)));
    }

    /** The text with its Markdown read; what cannot be printed comes out as plain text, with a finding. */
    Prose prose(YamlNode.Scalar scalar, List<Finding> findings) {
        String value = scalar.value().stripTrailing();
        Optional<Prose> plain = PlainText.read(value);
        return plain.orElseGet(() -> {
            MarkdownReading markdown = new MarkdownReading(value, scalar.span());
            findings.addAll(markdown.findings());
            links.addAll(markdown.links());
            return markdown.prose();
        });
    }
}
