package org.fieldfold.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.prose.Passage;
import org.fieldfold.prose.Prose;
import org.fieldfold.prose.Run;

/**
 * Reads a text that has no Markdown in it but names in italics, so that the Markdown reader need not be
 * loaded for it. It gives what the Markdown reader would have given.
 */
final class PlainText {
    private static final String SIGNS = "_`[]<>&\\!|~\t";

    private PlainText() {
    }

    /** The text as paragraphs; empty when it may have other Markdown in it. */
    static Optional<Prose> read(String markdown) {
        List<String> paragraphs = new ArrayList<>();
        StringBuilder words = new StringBuilder();
        for (String line : markdown.split("\n", -1)) {
            if (!isPlain(line)) {
                return Optional.empty();
            }
            String bare = trim(line);
            if (bare.isEmpty() && words.length() > 0) {
                paragraphs.add(words.toString());
                words.setLength(0);
            } else if (!bare.isEmpty()) {
                words.append(words.length() == 0 ? "" : " ").append(bare);
            }
        }
        if (words.length() > 0) {
            paragraphs.add(words.toString());
        }
        List<Passage> passages = new ArrayList<>();
        for (String paragraph : paragraphs) {
            List<Run> runs = NamesInText.runs(paragraph);
            if (runs.isEmpty()) {
                return Optional.empty();
            }
            passages.add(new Passage.Paragraph(runs));
        }
        return Optional.of(new Prose(markdown, passages));
    }

    /** Whether neither a sign in the line nor its beginning can mean anything in Markdown. */
    private static boolean isPlain(String line) {
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c < ' ' || SIGNS.indexOf(c) >= 0) {
                return false;
            }
        }
        String bare = trim(line);
        if (bare.isEmpty()) {
            return true;
        }
        if (line.startsWith("    ")) {
            return false;
        }
        char first = bare.charAt(0);
        return "-+=#".indexOf(first) < 0 && !bare.startsWith("* ") && !bare.equals("*")
                && !beginsLikeNumberedItem(bare);
    }

    private static boolean beginsLikeNumberedItem(String bare) {
        int digits = 0;
        while (digits < bare.length() && bare.charAt(digits) >= '0' && bare.charAt(digits) <= '9') {
            digits++;
        }
        return digits > 0 && digits < bare.length() && ".)".indexOf(bare.charAt(digits)) >= 0;
    }

    private static String trim(String line) {
        int from = 0;
        int to = line.length();
        while (from < to && line.charAt(from) == ' ') {
            from++;
        }
        while (to > from && line.charAt(to - 1) == ' ') {
            to--;
        }
        return line.substring(from, to);
    }
}
