package org.fieldfold.content;

import java.util.List;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/**
 * Looks at what the escapes of a text in double quotes stand for (YAML 1.2.2, section 5.7): an escape must not
 * bring in what may not be written.
 */
final class EscapedCharacters {
    private EscapedCharacters() {
    }

    /** @param place of the text, with its quotation marks */
    static void report(Span place, List<Finding> findings) {
        String text = place.file().text();
        int at = text.indexOf('\\', place.start());
        while (at >= 0 && at + 1 < place.end()) {
            int digits = digits(text.charAt(at + 1));
            int end = Math.min(at + 2 + digits, place.end());
            int c = digits == 0 ? plain(text.charAt(at + 1)) : number(text.substring(at + 2, end));
            if (c >= 0 && UnseenCharacters.isUnseen(c)) {
                findings.add(UnseenCharacters.finding(new Span(place.file(), at, end), c));
                return;
            }
            at = text.indexOf('\\', end);
        }
    }

    private static int digits(char letter) {
        return switch (letter) {
            case 'x' -> 2;
            case 'u' -> 4;
            case 'U' -> 8;
            default -> 0;
        };
    }

    private static int number(String digits) {
        try {
            int c = Integer.parseInt(digits, 16);
            return Character.isValidCodePoint(c) ? c : -1;
        } catch (NumberFormatException broken) {
            // the YAML reader says so
            return -1;
        }
    }

    private static int plain(char letter) {
        return switch (letter) {
            case '0' -> 0;
            case 'a' -> 0x07;
            case 'b' -> 0x08;
            case 'v' -> 0x0B;
            case 'f' -> 0x0C;
            case 'e' -> 0x1B;
            case 'N' -> 0x85;
            case 'L' -> 0x2028;
            case 'P' -> 0x2029;
            default -> -1;
        };
    }
}
