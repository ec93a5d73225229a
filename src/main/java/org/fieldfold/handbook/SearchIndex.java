package org.fieldfold.handbook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
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

    private final Map<String, List<Integer>> named = new HashMap<>();
    private final Map<String, List<Integer>> told = new HashMap<>();
    private int pages;

    /**
     * Adds the next page: the words of its names, and those of its text.
     *
     * @param text words as {@link #told} gives them
     */
    void add(String names, Collection<String> text) {
        Folded.words(names).forEach(word -> add(word, named));
        text.forEach(word -> add(word, told));
        pages++;
    }

    /** The numbers of pages rise, and each stands once. */
    private void add(String word, Map<String, List<Integer>> found) {
        List<Integer> numbers = found.computeIfAbsent(word, first -> new ArrayList<>());
        if (numbers.isEmpty() || numbers.get(numbers.size() - 1) != pages) {
            numbers.add(pages);
        }
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
            List<Integer> title = named.getOrDefault(word, List.of());
            List<Integer> text = told.getOrDefault(word, List.of());
            if (!title.isEmpty()) {
                text = text.stream().filter(page -> !title.contains(page)).toList();
            }
            out.append(Integer.toString(shared, 36)).append(word, shared, word.length()).append(':');
            differences(title, out);
            if (!text.isEmpty() && text.size() <= Math.max(4, COMMON * pages)) {
                differences(text, out.append(':'));
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

    private static void differences(List<Integer> rising, StringBuilder out) {
        int before = -1;
        for (int page : rising) {
            out.append(before < 0 ? "" : ",").append(Integer.toString(page - before, 36));
            before = page;
        }
    }
}
