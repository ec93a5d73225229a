package org.fieldfold.handbook;

import java.util.regex.Pattern;

/** Keeps the two ends of a range on one line, and a number with its unit. */
final class Together {
    private static final Pattern RANGE = Pattern.compile("(?<=\\d)–(?=\\d)");
    private static final Pattern UNIT = Pattern.compile("(?<=[\\d¼½¾]) (?=(?:mm|cm|m|%|°[CF]|days?|hours?|feet|miles?)(?!\\w))");

    private Together() {
    }

    static String kept(String text) {
        if (text.chars().noneMatch(Character::isDigit)) {
            return text;
        }
        return UNIT.matcher(RANGE.matcher(text).replaceAll("–\u2060")).replaceAll("\u00a0");
    }
}
