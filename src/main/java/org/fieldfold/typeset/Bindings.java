package org.fieldfold.typeset;

import java.util.Set;
import java.util.regex.Pattern;

/**
 * Where a line must not end although there is a space or a dash: numbers stay with their units, ranges with
 * their dash, a genus with its species. Common practice of the trade, no source.
 */
final class Bindings {
    private static final String NUMERAL = "(?:[0-9][0-9.,]*)?[¼½¾⅓⅔⅛⅜⅝⅞]|[0-9][0-9.,]*";
    private static final Pattern NUMBER =
            Pattern.compile("[(≥≤<>~±+−]*(?:" + NUMERAL + ")(?:[–/-](?:" + NUMERAL + "))?");
    private static final Pattern INITIAL = Pattern.compile("[(]?[A-Z]\\.");
    private static final Pattern ADDRESS =
            Pattern.compile("(?:https?://)?[a-z0-9-]+(?:[.][a-z0-9-]+)+(?:/.*)?");
    private static final Set<String> SIGNS = Set.of("≥", "≤", "<", ">", "=", "×", "±", "~", "−", "+", "§",
            "№");
    private static final Set<String> TRAILING = Set.of("–", "—", "·", "-", "→", "=", "×", "+", "…");
    private static final Set<String> UNITS = Set.of("%", "‰", "mm", "cm", "m", "km", "µm", "in", "ft",
            "yd", "mi", "mile", "miles", "inch", "inches", "foot", "feet", "m²", "ha", "ac", "acre",
            "acres", "g", "kg", "oz", "lb", "l", "ml", "gal", "°", "°C", "°F", "C", "F", "s", "min", "h",
            "hour", "hours", "d", "day", "days", "week", "weeks", "month", "months", "year", "years", "pt",
            "dpi", "hora", "horas", "día", "días", "semana", "semanas", "mes", "meses", "año", "años",
            "pie", "pies", "milla", "millas", "pulgada", "pulgadas", "a.m.", "p.m.", "noon");

    private static final Set<String> MONTHS = Set.of("January", "February", "March", "April", "May",
            "June", "July", "August", "September", "October", "November", "December");

    private Bindings() {}

    static boolean isNumber(String token) {
        // most words are none: seen at once, without the pattern
        return !token.isEmpty() && !Character.isLetter(token.charAt(0)) && NUMBER.matcher(token).matches();
    }

    /** Whether the space between two tokens holds them together. */
    static boolean bound(String before, String after) {
        return TRAILING.contains(after) || SIGNS.contains(before) || (before.length() < 4
                && INITIAL.matcher(before).matches())
                || (isNumber(before) && (UNITS.contains(bare(after)) || MONTHS.contains(bare(after))))
                || (MONTHS.contains(before) && bare(after).length() < 3 && isNumber(bare(after)));
    }

    /**
     * Whether a line should rather not end between two tokens: behind a number, or before one that names a
     * thing.
     */
    static boolean attached(String before, String after) {
        return isNumber(before) || isNumber(bare(after)) && !before.endsWith(",") && !before.endsWith(".");
    }

    private static String bare(String token) {
        int end = token.length();
        while (end > 1 && ".,;:)!?".indexOf(token.charAt(end - 1)) >= 0) {
            end--;
        }
        return UNITS.contains(token) ? token : token.substring(0, end);
    }

    /**
     * Whether a line may end behind the dash, the slash or, in an address, the dot at {@code at} of
     * {@code token}.
     */
    static boolean opens(String token, int at) {
        char mark = token.charAt(at);
        boolean address = token.indexOf('@') > 0 || token.indexOf('.') > 0
                && ADDRESS.matcher(token).matches();
        if (address && (mark == '.' || mark == '@' || mark == '/') && at > 0 && at < token.length() - 4) {
            return token.charAt(at + 1) != '/' && token.charAt(at - 1) != '/';
        }
        if (at == 0 || at == token.length() - 1 || (mark != '-' && mark != '–' && mark != '—'
                && mark != '/')) {
            return false;
        }
        char before = token.charAt(at - 1);
        char after = token.charAt(at + 1);
        if (numeral(before) && numeral(after) || before == '/' || after == '/') {
            return false;
        }
        // a short prefix ('V-walk', 'P/N') is no line of its own
        return mark == '—' || mark == '–' || (at >= 3 && token.length() - at > 3);
    }

    private static boolean numeral(char c) {
        return Character.isDigit(c) || "¼½¾⅓⅔⅛⅜⅝⅞%°".indexOf(c) >= 0;
    }
}
