package org.fieldfold.content;

import java.util.List;
import java.util.OptionalInt;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/**
 * Characters that no reader sees, or that show a reader other words than those that are checked: whoever signs
 * an entry must have read what is in it.
 */
final class UnseenCharacters {
    private static final int MOST_FINDINGS = 20;
    /**
     * What is drawn as nothing at all and has not the general category of a format character (Unicode 15,
     * property Default_Ignorable_Code_Point; value from memory): from and to, in order.
     */
    private static final int[] IGNORABLE = {0x034F, 0x034F, 0x115F, 0x1160, 0x17B4, 0x17B5, 0x180B, 0x180F,
        0x2065, 0x2065, 0x3164, 0x3164, 0xFE00, 0xFE0F, 0xFFA0, 0xFFA0, 0xFFF0, 0xFFF8, 0xE0000, 0xE0FFF};

    private UnseenCharacters() {
    }

    /** Whether a character has no place in a text; tab and line end have. */
    static boolean isUnseen(int c) {
        if (c < 0x7F) {
            return c < ' ' && c != '\t' && c != '\n' && c != '\r';
        }
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> true;
            default -> isNoncharacter(c) || isIgnorable(c);
        };
    }

    private static boolean isNoncharacter(int c) {
        return (c & 0xFFFE) == 0xFFFE || c >= 0xFDD0 && c <= 0xFDEF;
    }

    private static boolean isIgnorable(int c) {
        for (int i = 0; i < IGNORABLE.length; i += 2) {
            if (c >= IGNORABLE[i] && c <= IGNORABLE[i + 1]) {
                return true;
            }
        }
        return false;
    }

    /** The offset of the first one at or behind {@code from}. */
    static OptionalInt next(String text, int from) {
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= ' ' && c < 0x7F) {
                continue;
            }
            int whole = text.codePointAt(i);
            if (isUnseen(whole)) {
                return OptionalInt.of(i);
            }
            i += Character.charCount(whole) - 1;
        }
        return OptionalInt.empty();
    }

    /** Says of a file where they stand, of the first ones. */
    static void report(SourceFile file, List<Finding> findings) {
        String text = file.text();
        OptionalInt at = next(text, 0);
        for (int found = 0; at.isPresent() && found < MOST_FINDINGS; found++) {
            int c = text.codePointAt(at.getAsInt());
            int end = at.getAsInt() + Character.charCount(c);
            findings.add(finding(new Span(file, at.getAsInt(), end), c));
            at = next(text, end);
        }
    }

    /** What is said of one. */
    static Finding finding(Span place, int c) {
        return FormRule.CONTROL_CHARACTER.at(place, "expected text, found " + named(c),
                "delete it; it may not be visible in your editor");
    }

    /** As a message names it. */
    static String named(int c) {
        String kind = isNoncharacter(c) || Character.getType(c) == Character.SURROGATE ? "no character at all,"
                : turns(c) ? "a sign that turns the direction of reading," : Character.getType(c)
                        == Character.CONTROL ? "the control character" : "a character that is not seen,";
        return "%s U+%04X".formatted(kind, c);
    }

    /** Unicode Standard Annex 9, table 4: explicit directional characters; and the marks. */
    private static boolean turns(int c) {
        return c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069 || c == 0x200E || c == 0x200F
                || c == 0x061C;
    }
}
