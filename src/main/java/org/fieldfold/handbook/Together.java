package org.fieldfold.handbook;

import java.util.List;

/** Keeps the two ends of a range on one line, and a number with its unit. */
final class Together {
    private static final List<String> UNITS = List.of("mm", "cm", "m", "%", "°C", "°F", "day", "days",
            "hour", "hours", "in", "ft", "pulg", "feet", "mile", "miles", "día", "días", "hora", "horas", "pies",
            "milla", "millas");

    private Together() {
    }

    static String kept(String text) {
        StringBuilder kept = null;
        for (int i = 1; i + 1 < text.length(); i++) {
            char sign = text.charAt(i);
            boolean range = sign == '–' && isDigit(text.charAt(i - 1)) && isDigit(text.charAt(i + 1));
            boolean unit = sign == ' ' && isDigit(text.charAt(i - 1)) && beginsWithUnit(text, i + 1);
            if (range || unit) {
                kept = kept == null ? new StringBuilder(text.substring(0, i)) : kept;
                kept.append(range ? "–\u2060" : "\u00a0");
            } else if (kept != null) {
                kept.append(sign);
            }
        }
        return kept == null ? text : kept.append(text.charAt(text.length() - 1)).toString();
    }

    private static boolean isDigit(char sign) {
        return sign >= '0' && sign <= '9' || sign == '¼' || sign == '½' || sign == '¾';
    }

    private static boolean beginsWithUnit(String text, int from) {
        for (String unit : UNITS) {
            int end = from + unit.length();
            if (text.startsWith(unit, from) && (end == text.length()
                    || !Character.isLetterOrDigit(text.charAt(end)))) {
                return true;
            }
        }
        return false;
    }
}
