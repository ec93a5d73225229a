package org.fieldfold.handbook;

import java.util.Collection;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * An index of the words of pages, to be asked by the beginnings of words. It is written front-coded: of each word,
 * in order, the number of letters that it shares with the one before and its other letters, then the pages that
 * have it in a name and those that have it in their text alone, as differences; all numbers to base 36, as in
 * {@code 3ot:0,2:5;}.
 */
final class SearchIndex {
    /** A word on more than this share of the pages finds nothing in particular. */
    private static final double COMMON = 0.3;
    private static final int MOST_SHARED = 35;

    private final Map<String, SortedSet<Integer>> named = new TreeMap<>();
    private final Map<String, SortedSet<Integer>> told = new TreeMap<>();
    private int pages;

    /**
     * Adds the next page: the words of its names, and those of its text.
     *
     * @param text words as {@link #told} gives them
     */
    void add(String names, Collection<String> text) {
        Folded.words(names).forEach(word -> named.computeIfAbsent(word, key -> new TreeSet<>()).add(pages));
        text.forEach(word -> told.computeIfAbsent(word, key -> new TreeSet<>()).add(pages));
        pages++;
    }

    /** The words of a text that lead to it, each once. */
    static SortedSet<String> told(String text) {
        return Folded.words(text).stream().filter(word -> word.length() > 2 && !Character.isDigit(word.charAt(0)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    String written() {
        SortedSet<String> words = new TreeSet<>(named.keySet());
        told.forEach((word, found) -> {
            if (found.size() <= Math.max(4, COMMON * pages)) {
                words.add(word);
            }
        });
        StringBuilder out = new StringBuilder();
        String before = "";
        for (String word : words) {
            int shared = shared(before, word);
            SortedSet<Integer> title = named.getOrDefault(word, new TreeSet<>());
            SortedSet<Integer> text = new TreeSet<>(told.getOrDefault(word, new TreeSet<>()));
            text.removeAll(title);
            out.append(Integer.toString(shared, 36)).append(word.substring(shared)).append(':')
                    .append(differences(title));
            if (!text.isEmpty() && text.size() <= Math.max(4, COMMON * pages)) {
                out.append(':').append(differences(text));
            }
            out.append(';');
            before = word;
        }
        return out.toString();
    }

    private static int shared(String one, String other) {
        int most = Math.min(MOST_SHARED, Math.min(one.length(), other.length()));
        int shared = 0;
        while (shared < most && one.charAt(shared) == other.charAt(shared)) {
            shared++;
        }
        return shared;
    }

    private static String differences(Collection<Integer> rising) {
        StringBuilder out = new StringBuilder();
        int before = -1;
        for (int page : rising) {
            out.append(before < 0 ? "" : ",").append(Integer.toString(page - before, 36));
            before = page;
        }
        return out.toString();
    }
}
