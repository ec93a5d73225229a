package org.fieldfold.handbook;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes HTML that is well-formed XML as well. The only place where text becomes markup: whatever comes in
 * through {@link #text} or an attribute's value is text and stays text.
 */
public final class Markup {
    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element; attributes are names and values by turns. */
    public Markup open(String tag, String... attributes) {
        start(tag, attributes);
        out.append('>');
        open.push(tag);
        return this;
    }

    /** An element without content. */
    public Markup empty(String tag, String... attributes) {
        start(tag, attributes);
        out.append("/>");
        return this;
    }

    /** Closes the element that was opened last. */
    public Markup close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    /** An element with nothing but text in it. */
    public Markup element(String tag, String text, String... attributes) {
        return open(tag, attributes).text(text).close();
    }

    public Markup text(String text) {
        escape(text);
        return this;
    }

    /** A line break in the source, so that a page can be compared line by line. */
    public Markup line() {
        out.append('\n');
        return this;
    }

    /** What was written by this class before, and so is markup already. */
    Markup written(String markup) {
        out.append(markup);
        return this;
    }

    private void start(String tag, String... attributes) {
        out.append('<').append(tag);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            escape(attributes[i + 1]);
            out.append('"');
        }
    }

    /** The text without what no page may hold. */
    static String allowed(String text) {
        StringBuilder kept = new StringBuilder();
        text.codePoints().forEach(sign -> kept.appendCodePoint(isAllowed(sign) ? sign : 0xFFFD));
        return kept.toString();
    }

    private void escape(String text) {
        for (int i = 0; i < text.length(); ) {
            int sign = text.codePointAt(i);
            i += Character.charCount(sign);
            switch (sign) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(isAllowed(sign) ? sign : 0xFFFD);
            }
        }
    }

    /** What both HTML and XML 1.0 allow: no controls, no halves of pairs, no noncharacters. */
    private static boolean isAllowed(int sign) {
        boolean control = sign < 0x20 && sign != '\t' && sign != '\n' || sign >= 0x7F && sign < 0xA0;
        boolean half = sign >= 0xD800 && sign <= 0xDFFF;
        boolean noncharacter = sign >= 0xFDD0 && sign <= 0xFDEF || (sign & 0xFFFE) == 0xFFFE;
        return !control && !half && !noncharacter;
    }

    @Override
    public String toString() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("element " + open.peek() + " is still open");
        }
        return out.toString();
    }
}
