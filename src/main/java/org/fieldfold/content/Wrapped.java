package org.fieldfold.content;

import java.util.ArrayList;
import java.util.List;

/** Breaks a paragraph into lines without making Markdown of a word that comes to stand first. */
final class Wrapped {
    static final int COLUMNS = 108;

    private Wrapped() {
    }

    /** Lines of at most {@code width} characters, where words allow it; white space in a row becomes one. */
    static List<String> lines(String paragraph, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : paragraph.strip().split("\\s+")) {
            boolean full = line.length() + 1 + word.length() > width;
            if (full && line.length() > 0 && !word.matches("[-+*#>=]+|\\d+[.)]")) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
