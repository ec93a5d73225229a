package org.fieldfold.manuscript;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.fieldfold.entry.Units;

/** What guides and handbook say by themselves, in one language. */
public final class Phrases {
    /** Stands in for phrases of other languages that are listed as not translated yet. */
    private static final String BASE = "en";
    private static final String EXPAND = "expand.";

    /** Those of languages that were asked for: they never change while the program runs. */
    private static final Map<String, Properties> READ = new ConcurrentHashMap<>();

    private final String language;
    private final Properties words;
    private final Optional<Units> units;

    private Phrases(String language, Properties words, Optional<Units> units) {
        this.language = language;
        this.words = words;
        this.units = units;
    }

    /**
     * The phrases of a language.
     *
     * @throws IllegalArgumentException for a language that Fieldfold has no phrases for
     */
    public static Phrases in(String language) {
        return new Phrases(language, READ.computeIfAbsent(language, Phrases::read), Optional.empty());
    }

    private static Properties read(String language) {
        String name = "phrases." + language + ".properties";
        try (InputStream file = Phrases.class.getResourceAsStream(name)) {
            if (file == null) {
                throw new IllegalArgumentException("no phrases for language '" + language + "'");
            }
            Properties words = new Properties();
            try (Reader reader = new InputStreamReader(file, StandardCharsets.UTF_8)) {
                words.load(reader);
            }
            return words;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Whether there are phrases for a language. */
    public static boolean speaks(String language) {
        return Phrases.class.getResource("phrases." + language + ".properties") != null;
    }

    /** The same phrases with quantities in other units; empty for each quantity in its own. */
    public Phrases with(Optional<Units> wanted) {
        return new Phrases(language, words, wanted);
    }

    public Optional<Units> units() {
        return units;
    }

    public Measures measures() {
        return new Measures(this, units);
    }

    public String language() {
        return language;
    }

    /** The phrase of a key, with {@code {0}}, {@code {1}} and so on filled in. */
    public String say(String key, Object... parts) {
        String phrase = words.getProperty(key);
        if (phrase == null && !language.equals(BASE)) {
            return in(BASE).say(key, parts);
        }
        if (phrase == null) {
            throw new IllegalArgumentException("no phrase '" + key + "' in language '" + language + "'");
        }
        for (int i = 0; i < parts.length; i++) {
            phrase = phrase.replace("{" + i + "}", String.valueOf(parts[i]));
        }
        return phrase;
    }

    /** What the abbreviations of this language stand for, as {@code PHI} for the pre-harvest interval. */
    public Map<String, String> expansions() {
        Map<String, String> expansions = new TreeMap<>();
        words.stringPropertyNames().stream().filter(key -> key.startsWith(EXPAND)).forEach(key ->
                expansions.put(key.substring(EXPAND.length()), words.getProperty(key)));
        return expansions;
    }

    /** All phrases whose keys begin with {@code prefix}, in the order of the keys, which lose it. */
    public SortedMap<String, String> under(String prefix) {
        SortedMap<String, String> found = language.equals(BASE) ? new TreeMap<>() : in(BASE).under(prefix);
        words.stringPropertyNames().stream().filter(key -> key.startsWith(prefix))
                .forEach(key -> found.put(key.substring(prefix.length()), words.getProperty(key)));
        return found;
    }

    /** The phrase for one where {@code count} is 1 and there is such a phrase, or else for many. */
    public String count(String key, int count, Object... parts) {
        return say(count == 1 && words.containsKey(key + ".1") ? key + ".1" : key, parts);
    }

    /** A constant's word: {@code stage.larva} for {@code word("stage", LARVA)}. */
    public String word(String family, Enum<?> constant) {
        return say(family + "." + constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /**
     * With a capital first letter, for the beginning of a line: names stand in the files as they run in a
     * sentence.
     */
    public static String capital(String words) {
        return words.isEmpty() ? words
                : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** A day of any year, as people of this language write it in a line of text. */
    public String day(MonthDay day) {
        return say("day", day.getDayOfMonth(), say("month." + day.getMonthValue()));
    }

    /** The same in few letters. */
    public String shortDay(MonthDay day) {
        return say("day", day.getDayOfMonth(), say("month.short." + day.getMonthValue()));
    }

    /** A date in few letters, as on the foot of a panel. */
    public String shortDate(LocalDate date) {
        return say("date.short", date.getDayOfMonth(), say("month.short." + date.getMonthValue()), date.getYear());
    }

    /** A date as people of this language write it in a line of text. */
    public String date(LocalDate date) {
        return say("date", date.getDayOfMonth(), say("month." + date.getMonthValue()), date.getYear());
    }
}
