package org.fieldfold.region;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;

/** Names of places, people and pests that are made of syllables. Each is given once. */
final class InventedNames {
    private static final List<String> HEADS = List.of("Bra", "Cro", "Dru", "Fen", "Glo", "Hus", "Jor", "Kel", "Lum",
            "Mar", "Nor", "Orl", "Pel", "Quo", "Ros", "Sel", "Tam", "Ulv", "Ven", "Wex", "Yar", "Zel");
    private static final List<String> HEARTS = List.of("bel", "dim", "fal", "gan", "lod", "mer", "nip", "rin", "sko",
            "tas", "vel", "wim");
    private static final List<String> TAILS = List.of("brook", "field", "ford", "ham", "holt", "mere", "moor", "ridge",
            "stead", "wick", "combe", "low");
    private static final int TOWNS = HEADS.size() * HEARTS.size() * TAILS.size();
    /** Has no factor in common with the number of towns, so that every town comes once in a round. */
    private static final int STEP = 1009;
    private static final String CONSONANTS = "bdfgklmnprstvz";
    private static final String VOWELS = "aeiou";

    private final Random chance;
    private final int first;
    private final Set<String> given = new HashSet<>();

    InventedNames(Random chance) {
        this.chance = chance;
        this.first = chance.nextInt(TOWNS);
    }

    /** The town with this number. */
    String town(int number) {
        int place = (int) ((first + (long) number * STEP) % TOWNS);
        String name = HEADS.get(place % HEADS.size()) + HEARTS.get(place / HEADS.size() % HEARTS.size())
                + TAILS.get(place / HEADS.size() / HEARTS.size());
        return number < TOWNS ? name : name + " " + (number / TOWNS + 1);
    }

    /** A person; two may bear one name. */
    String person() {
        return capital(word(4)) + " " + capital(word(6));
    }

    /** A word that was not given before, as long as {@code like}, or a little longer where that is short. */
    String word(String like) {
        for (int length = Math.max(4, Math.min(9, like.length()));; length++) {
            for (int tries = 0; tries < 100; tries++) {
                String word = word(length);
                if (given.add(word)) {
                    return word;
                }
            }
        }
    }

    private String word(int length) {
        StringBuilder word = new StringBuilder();
        while (word.length() < length) {
            String letters = word.length() % 2 == 0 ? CONSONANTS : VOWELS;
            word.append(letters.charAt(chance.nextInt(letters.length())));
        }
        return word.toString();
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }
}
