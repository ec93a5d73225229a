package org.fieldfold.manuscript;

import java.text.Normalizer;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;

/**
 * The order in which readers of a language look for names: by letters, whatever their marks and capitals. It is
 * spelt out here, as the tables of a platform change with its version.
 */
public final class Alphabet implements Comparator<String> {
    /** Sorts behind every letter, so that ñ stands behind all that begins with n. */
    private static final char BEHIND_LETTERS = '\u007f';
    private static final char TILDE = '\u0303';

    private final boolean spanish;

    private Alphabet(String language) {
        this.spanish = language.equals("es");
    }

    public static Alphabet of(String language) {
        return new Alphabet(language);
    }

    @Override
    public int compare(String one, String other) {
        int byLetters = letters(one).compareTo(letters(other));
        return byLetters != 0 ? byLetters : one.compareTo(other);
    }

    /** Letters and digits alone, words parted by one blank, so that a shorter name stands before a longer. */
    private String letters(String name) {
        StringBuilder letters = new StringBuilder();
        for (char sign : Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFD).toCharArray()) {
            int last = letters.length() - 1;
            if (Character.isLetterOrDigit(sign)) {
                letters.append(sign);
            } else if (sign == TILDE && spanish && last >= 0 && letters.charAt(last) == 'n') {
                // the alphabet of 27 letters: n, ñ, o (Real Academia Española, Ortografía 2010, from memory)
                letters.append(BEHIND_LETTERS);
            } else if ((Character.isWhitespace(sign) || sign == '-') && last >= 0 && letters.charAt(last) != ' ') {
                letters.append(' ');
            }
        }
        return letters.toString();
    }

    /** A base whose crops, entries, guides, materials and offices stand by the names that readers see. */
    public ContentBase order(ContentBase base) {
        return new ContentBase(base.edition(), byName(base.crops(), crop -> crop.name()),
                byName(base.materials(), material -> material.name()), base.sources(), base.prices(),
                byName(base.pests(), pest -> pest.names().common()),
                byName(base.enemies(), enemy -> enemy.names().common()),
                byName(base.practices(), practice -> practice.name()), byName(base.guides(), guide -> guide.title()),
                byName(base.offices(), office -> office.name()), base.figures(), base.chapters(), base.stations(),
                base.schemes(), base.unread(), base.translations());
    }

    private <T> SortedMap<String, Placed<T>> byName(SortedMap<String, Placed<T>> records, Function<T, String> name) {
        Map<String, String> places = new HashMap<>();
        records.forEach((id, record) -> places.put(id, letters(name.apply(record.value()))));
        SortedMap<String, Placed<T>> sorted = new TreeMap<>(Comparator.comparing(
                (String id) -> places.getOrDefault(id, id)).thenComparing(Comparator.naturalOrder()));
        sorted.putAll(records);
        return sorted;
    }
}
