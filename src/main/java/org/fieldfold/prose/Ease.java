package org.fieldfold.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * How easy a text is to read, by the length of its sentences and words.
 *
 * @param sentences at least 1
 * @param words at least 1
 */
public record Ease(int sentences, int words, int syllables) {
    /** The highest school grade that a text for everybody should ask for. */
    public static final double TARGET_GRADE = 8;
    /** The lowest ease on the Spanish scale that is still called normal (60 to 70; value from memory). */
    public static final double TARGET_EASE = 60;

    /** What ends a unit of thought: a full stop, question mark, exclamation mark, semicolon or colon. */
    private static final Pattern END = Pattern.compile("(?<=[.?!;:])\\s+|\\n+");
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}'’.,]*");

    private static final Pattern MARKS = Pattern.compile("['’.,]+$");

    public Ease {
        if (sentences < 1 || words < 1 || syllables < 1) {
            throw new IllegalArgumentException("expected sentences, words and syllables, found " + sentences
                    + ", " + words + " and " + syllables);
        }
    }

    /**
     * Counts a text.
     *
     * @param text with at least one word
     * @param language {@code en} or {@code es}
     */
    public static Ease of(String text, String language) {
        int sentences = 0;
        int words = 0;
        int syllables = 0;
        for (String sentence : sentences(text)) {
            List<String> of = words(sentence);
            sentences += of.isEmpty() ? 0 : 1;
            words += of.size();
            syllables += of.stream().mapToInt(word -> Syllables.of(word, language)).sum();
        }
        return new Ease(sentences, words, syllables);
    }

    /** Both texts together. */
    public Ease and(Ease other) {
        return new Ease(sentences + other.sentences, words + other.words, syllables + other.syllables);
    }

    public static List<String> sentences(String text) {
        return END.splitAsStream(text).map(String::strip).filter(sentence -> !sentence.isEmpty()).toList();
    }

    static List<String> words(String sentence) {
        List<String> words = new ArrayList<>();
        WORD.matcher(sentence).results().forEach(word ->
                words.add(MARKS.matcher(word.group()).replaceAll("")));
        return words;
    }

    /**
     * The school grade that an English text asks for, 0.39 words a sentence + 11.8 syllables a word - 15.59
     * (Kincaid, Fishburne, Rogers and Chissom 1975, Research Branch Report 8-75).
     */
    public double grade() {
        return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    /**
     * The ease of a Spanish text, 206.84 - 60 syllables a word - 1.02 words a sentence (Fernández Huerta
     * 1959; the first factor counts syllables of 100 words as 0.60, as Gwillim Law put right in 2011, and not
     * syllables of one word as 0.60).
     */
    public double spanishEase() {
        return 206.84 - 60.0 * syllables / words - 1.02 * words / sentences;
    }

    /** Whether it is as plain as it should be. */
    public boolean isPlain(String language) {
        return language.equals("es") ? spanishEase() >= TARGET_EASE : grade() <= TARGET_GRADE;
    }
}
