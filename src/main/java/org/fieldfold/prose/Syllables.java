package org.fieldfold.prose;

import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/** Counts syllables of words, by how they are written. */
final class Syllables {
    private static final Map<String, Integer> BY_HEART = Map.ofEntries(Map.entry("every", 2),
            Map.entry("everybody", 4), Map.entry("acre", 2), Map.entry("acres", 2), Map.entry("hour", 2),
            Map.entry("hours", 2), Map.entry("hundred", 2), Map.entry("onion", 2), Map.entry("onions", 2),
            Map.entry("something", 2), Map.entry("somebody", 3), Map.entry("therefore", 2),
            Map.entry("elsewhere", 2), Map.entry("species", 2), Map.entry("science", 2),
            Map.entry("being", 2), Map.entry("people", 2), Map.entry("area", 3), Map.entry("areas", 3),
            Map.entry("idea", 3), Map.entry("create", 2), Map.entry("created", 3), Map.entry("business", 2),
            Map.entry("evening", 2), Map.entry("average", 3), Map.entry("variety", 4),
            Map.entry("varieties", 4), Map.entry("several", 2), Map.entry("soldier", 2));

    /** An e before an ending that begins with a consonant is not heard: close-ly. */
    private static final Pattern INNER_E =
            Pattern.compile("(?<=[^aeiouy])e(?=(?:ly|less|ful|ments?|ness|some)$)");
    /** The e of -e, -es and -ed is not heard, but for: ta-ble, box-es, weed-ed. */
    private static final Pattern LAST_E = Pattern.compile("(?<=[^aeiouy])(?<![^aeiouylrw]l)e$");
    private static final Pattern LAST_ES =
            Pattern.compile("(?<=[^aeiouysxzcg])(?<!ch|sh)(?<![^aeiouylrw]l)es$");
    private static final Pattern LAST_ED = Pattern.compile("(?<=[^aeiouytd])ed$");
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");
    /** Vowels that stand together and are heard apart: gi-ant, flu-id, po-et. */
    private static final Pattern APART = Pattern.compile("(?<![tscgx])i[ao]|(?<=[tscgx])ia(?=[^ln]|$)"
            + "|[^q]ua(?!r)|eo(?!u)|[^qg]uo|iu|ie(?=[tr]$)|ying|[aeou]i(?=ng)|ui(?=t[iy]|n$)"
            + "|(?<=[dnlr])ious|(?<=[^aeiou])ier|yo(?=[^u])|ye(?=r$)");
    private static final Pattern HUMMED = Pattern.compile("(?:sm|thm)s?$");
    private static final int SHORT = 3;
    private static final Pattern LAST_S = Pattern.compile("['’]s?$");
    private static final Pattern APOSTROPHE = Pattern.compile("['’]");
    /** Words come again and again: their counts are remembered, but not without end. */
    private static final Map<String, Map<String, Integer>> COUNTED = Map.of("en", new ConcurrentHashMap<>(), "es",
            new ConcurrentHashMap<>());
    private static final int MOST_REMEMBERED = 20_000;

    private Syllables() {
    }

    static int of(String word, String language) {
        Map<String, Integer> known = COUNTED.get(language.equals("es") ? "es" : "en");
        Integer before = known.get(word);
        int count = before == null ? count(word, language) : before;
        if (before == null && known.size() < MOST_REMEMBERED) {
            known.put(word, count);
        }
        return count;
    }

    private static int count(String word, String language) {
        String letters = APOSTROPHE.matcher(LAST_S.matcher(word.toLowerCase(Locale.ROOT)).replaceAll(""))
                .replaceAll("");
        int digits = (int) letters.chars().filter(c -> c >= '0' && c <= '9').count();
        return digits > 0 ? digits : language.equals("es") ? spanish(letters) : english(letters);
    }

    private static int english(String word) {
        if (BY_HEART.containsKey(word)) {
            return BY_HEART.get(word);
        }
        String heard = INNER_E.matcher(word).replaceAll("");
        String bare = LAST_E.matcher(heard).replaceAll("");
        bare = bare.equals(heard) ? LAST_ES.matcher(heard).replaceAll("") : bare;
        bare = bare.equals(heard) ? LAST_ED.matcher(heard).replaceAll("d") : bare;
        long count = VOWELS.matcher(bare).results().count();
        if (bare.length() > SHORT) {
            count += APART.matcher(bare).results().count();
        }
        count += HUMMED.matcher(bare).find() ? 1 : 0;
        return (int) Math.max(1, count);
    }

    /**
     * A syllable is a strong vowel (a, e, o, or i and u with an accent), or a weak one beside which no strong
     * one stands; two strong ones make two (hiatus), and so does an accented weak one beside a strong one.
     * The u of que, qui, gue, gui is not heard unless it has its dots. Rules of Spanish orthography, from memory.
     */
    private static int spanish(String word) {
        String heard = word.replaceAll("qu(?=[eiéí])", "q").replaceAll("gu(?=[eiéí])", "g")
                .replaceAll("y$", "i").replace('ü', 'u');
        int count = 0;
        boolean weakBefore = false;
        boolean strongBefore = false;
        for (char c : heard.toCharArray()) {
            boolean strong = "aeoáéóíú".indexOf(c) >= 0;
            boolean weak = "iu".indexOf(c) >= 0;
            if (strong) {
                count += weakBefore && !strongBefore && "íú".indexOf(c) < 0 ? 0 : 1;
            } else if (weak) {
                count += weakBefore || strongBefore ? 0 : 1;
            }
            weakBefore = weak;
            strongBefore = strong;
        }
        return Math.max(1, count);
    }
}
