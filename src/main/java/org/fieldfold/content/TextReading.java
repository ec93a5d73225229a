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

    /** The Markdown reader's work grows with the square of a paragraph; no page of prose comes near this. */
    private static final int LONGEST_PARAGRAPH = 5_000;

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
     * Behind a text, one space and '#' are taken for part of the text, as in {@code trap #3} or {@code lot #
     * 7}; two spaces, '#' and a space are a comment.
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
        boolean comment = at - end >= 2 && (at + 1 == text.length()
                || Character.isWhitespace(text.charAt(at + 1)));
        return comment ? Optional.empty()
                : Optional.of(YamlSlips.swallowed(KeySlips.toLineEnd(scalar.span(), at)));
    }

    private static Optional<Finding> noBreakSpace(YamlNode.Scalar scalar) {
        String value = scalar.value();
        int start = scalar.span().start();
        int end = scalar.span().end();
        String text = scalar.span().file().text();
        int at = value.startsWith("\u00a0") ? start : value.endsWith("\u00a0") ? end - 1 : -1;
        if (at < 0) {
            int key = value.indexOf(":\u00a0");
            at = key > 0 && value.substring(0, key).matches("[a-z][a-z-]*") ? text.indexOf(":\u00a0", start)
                    + 1 : -1;
        }
        return at < 0 ? Optional.empty()
                : Optional.of(YamlSlips.noBreakSpace(new Span(scalar.span().file(), at, at + 1)));
    }

    /** The text with its Markdown read; what cannot be printed comes out as plain text, with a finding. */
    Prose prose(YamlNode.Scalar scalar, List<Finding> findings) {
        String value = scalar.value().stripTrailing();
        Optional<Prose> plain = PlainText.read(value);
        return plain.orElseGet(() -> markdown(value, scalar.span(), findings));
    }

    private Prose markdown(String value, Span place, List<Finding> findings) {
        int longest = longestParagraph(value);
        if (longest > LONGEST_PARAGRAPH) {
            findings.add(FormRule.PARAGRAPH_TOO_LONG.at(place, "expected paragraphs of at most "
                    + LONGEST_PARAGRAPH
                    + " characters, found one of " + longest, "put blank lines between its paragraphs"));
            return Prose.plain(value);
        }
        try {
            MarkdownReading markdown = new MarkdownReading(value, place);
            findings.addAll(markdown.findings());
            links.addAll(markdown.links());
            return markdown.prose();
        } catch (StackOverflowError e) {
            // the Markdown reader calls itself for each level of nesting, and has no limit of its own
            findings.add(FormRule.TOO_DEEP.at(place,
                    "expected Markdown that is nested as people nest it, found more",
                    "take out the signs that repeat"));
            return Prose.plain(value);
        }
    }

    private static int longestParagraph(String value) {
        int longest = 0;
        int from = 0;
        while (from < value.length()) {
            int blank = value.indexOf("\n\n", from);
            int to = blank < 0 ? value.length() : blank;
            longest = Math.max(longest, to - from);
            from = to + 2;
        }
        return longest;
    }
}
