package org.fieldfold.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads the small languages inside attributes of drawings: numbers, lists of them, path data and transforms. It
 * takes no more than what SVG 1.1 allows and the drawing library reads as a browser does: that library follows
 * {@code M0 0z 1 1} without end.
 */
final class DrawingScan {
    /** In units of the drawing; beyond it the numbers of a printed page break. */
    static final double LARGEST = 1_000_000;
    private static final Map<Character, Integer> NUMBERS = Map.of('m', 2, 'l', 2, 't', 2, 'h', 1, 'v', 1, 's', 4,
            'q', 4, 'c', 6, 'a', 7, 'z', 0);
    private static final int FIRST_FLAG = 3;
    private static final int LAST_FLAG = 4;

    private final String text;
    private int at;
    private double last;

    private DrawingScan(String text) {
        this.text = text;
    }

    /** Whether it is one number, with nothing around it. */
    static boolean isNumber(String text) {
        DrawingScan scan = new DrawingScan(text);
        return scan.number() && scan.at == text.length();
    }

    /** A list of numbers, each parted from the next by a comma or blanks; empty when it is none. */
    static Optional<List<Double>> numbers(String text) {
        DrawingScan scan = new DrawingScan(text.strip());
        List<Double> numbers = new ArrayList<>();
        while (scan.at < scan.text.length()) {
            int before = scan.at;
            if (before > 0 && (!scan.separator() || scan.at == before) || !scan.number()) {
                return Optional.empty();
            }
            numbers.add(scan.last);
        }
        return Optional.of(numbers);
    }

    /** Path data (SVG 1.1, 8.3.9); nothing at all is a path that draws nothing. */
    static boolean isPath(String text) {
        DrawingScan scan = new DrawingScan(text);
        scan.blanks();
        boolean first = true;
        while (scan.at < text.length()) {
            char command = text.charAt(scan.at++);
            char kind = Character.toLowerCase(command);
            if (command > 'z' || !NUMBERS.containsKey(kind) || first && kind != 'm' || !scan.follow(kind)) {
                return false;
            }
            scan.blanks();
            first = false;
        }
        return true;
    }

    /** The numbers behind a command, as often as they come. */
    private boolean follow(char kind) {
        int count = NUMBERS.get(kind);
        blanks();
        for (int sets = 0; count > 0; sets++) {
            int before = at;
            if (sets > 0 && (!separator() || !startsNumber())) {
                at = before;
                return !text.startsWith(",", skipped(before));
            }
            for (int i = 0; i < count; i++) {
                if (i > 0 && !separator() || !(kind == 'a' && (i == FIRST_FLAG || i == LAST_FLAG) ? flag()
                        : number())) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Functions that move what is inside, with as many numbers as each takes. */
    static boolean isTransform(String text) {
        DrawingScan scan = new DrawingScan(text.strip());
        while (scan.at < scan.text.length()) {
            int open = scan.text.indexOf('(', scan.at);
            int close = scan.text.indexOf(')', scan.at);
            if (open < 0 || close < open || !fits(scan.text.substring(scan.at, open),
                    numbers(scan.text.substring(open + 1, close)).map(List::size).orElse(0))) {
                return false;
            }
            scan.at = close + 1;
            if (!scan.separator() || scan.at == scan.text.length() && scan.text.endsWith(",")) {
                return false;
            }
        }
        return true;
    }

    private static boolean fits(String function, int numbers) {
        return switch (function) {
            case "matrix" -> numbers == 6;
            case "translate", "scale" -> numbers == 1 || numbers == 2;
            case "rotate" -> numbers == 1 || numbers == 3;
            case "skewX", "skewY" -> numbers == 1;
            default -> false;
        };
    }

    private static boolean isBlank(char sign) {
        return sign == ' ' || sign == '\t' || sign == '\n' || sign == '\r';
    }

    private void blanks() {
        at = skipped(at);
    }

    private int skipped(int from) {
        int next = from;
        while (next < text.length() && isBlank(text.charAt(next))) {
            next++;
        }
        return next;
    }

    /** Blanks with one comma among them, or none. */
    private boolean separator() {
        blanks();
        if (text.startsWith(",", at)) {
            at++;
            blanks();
        }
        return !text.startsWith(",", at);
    }

    private boolean startsNumber() {
        return at < text.length() && (isDigit(at) || "+-.".indexOf(text.charAt(at)) >= 0);
    }

    private boolean isDigit(int place) {
        return place < text.length() && text.charAt(place) >= '0' && text.charAt(place) <= '9';
    }

    private boolean flag() {
        boolean found = at < text.length() && (text.charAt(at) == '0' || text.charAt(at) == '1');
        at++;
        return found;
    }

    private boolean number() {
        int from = at;
        if (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
            at++;
        }
        boolean whole = digits();
        if (text.startsWith(".", at)) {
            at++;
            whole = digits();
        }
        if (!whole) {
            return false;
        }
        int behind = at;
        if (at < text.length() && Character.toLowerCase(text.charAt(at)) == 'e') {
            at++;
            if (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
                at++;
            }
            if (!digits()) {
                at = behind;
            }
        }
        last = Double.parseDouble(text.substring(from, at));
        return Math.abs(last) <= LARGEST;
    }

    private boolean digits() {
        int from = at;
        while (isDigit(at)) {
            at++;
        }
        return at > from;
    }
}
