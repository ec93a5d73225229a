package org.fieldfold.content;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The known word that was probably meant. */
public final class Nearest {
    private Nearest() {
    }

    /**
     * The known word with the fewest slips of the key (letter added, left out, changed, or two exchanged)
     * from what was found; empty when more than a third of it would have to change. Of several, the first in
     * order.
     */
    public static Optional<String> to(String found, Collection<String> known) {
        String plain = plain(found);
        int most = Math.max(1, Math.min(plain.length(), 40) / 3);
        return known.stream()
                .filter(word -> Math.abs(plain(word).length() - plain.length()) <= most)
                .map(word -> new Candidate(word, slips(plain, plain(word))))
                .filter(candidate -> candidate.slips <= most)
                .min(Comparator.comparingInt(Candidate::slips).thenComparing(Candidate::word))
                .map(Candidate::word);
    }

    /** The hint that names it, or {@code otherwise}. */
    static String hint(String found, Collection<String> known, String otherwise) {
        return to(found, known).map(word -> "did you mean '" + word + "'?").orElse(otherwise);
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    }

    /** Damerau's distance in the form that lets each pair be exchanged once. */
    private static int slips(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int least = Math.min(cost[i - 1][j - 1] + change,
                        Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2)
                        && a.charAt(i - 2) == b.charAt(j - 1)) {
                    least = Math.min(least, cost[i - 2][j - 2] + 1);
                }
                cost[i][j] = least;
            }
        }
        return cost[a.length()][b.length()];
    }

    private record Candidate(String word, int slips) {
    }
}
