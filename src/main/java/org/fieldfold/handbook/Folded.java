package org.fieldfold.handbook;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** Words as they are searched: without accents, in small letters. The script folds the same way (fold.js). */
final class Folded {
    private static final Pattern MARKS = Pattern.compile("[\u0300-\u036f]");
    private static final Pattern BETWEEN =
            Pattern.compile("[^a-z0-9\u00e0-\u024f\u0370-\u1fff\u3040-\u9fff]+");
    /** Letters that carry no mark and are still typed in another way. */
    private static final Map<String, String> SPELT = Map.of("\u00df", "ss", "\u00e6", "ae", "\u0153", "oe",
            "\u00f8", "o", "\u0142", "l", "\u0111", "d");

    private Folded() {
    }

    static String text(String text) {
        String plain = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("")
                .toLowerCase(Locale.ROOT);
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < plain.length(); i++) {
            String sign = plain.substring(i, i + 1);
            out.append(SPELT.getOrDefault(sign, sign));
        }
        return out.toString();
    }

    static List<String> words(String text) {
        return Arrays.stream(BETWEEN.split(text(text))).filter(word -> !word.isEmpty()).toList();
    }
}
