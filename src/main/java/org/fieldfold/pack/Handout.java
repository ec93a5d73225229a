package org.fieldfold.pack;

import java.util.List;
import org.fieldfold.fold.Imposition;

/**
 * One guide at the counter, in each language that the office prints.
 *
 * @param crops their names
 * @param entries names of the pests that this office's copies have
 * @param without names of those that it leaves out
 * @param noted names of those on which it has a note of its own
 * @param miniature what its sheet looks like
 */
public record Handout(String title, List<String> crops, List<String> entries,
        List<String> without, List<String> noted, Imposition sheet, Miniature miniature, List<Copy> copies) {
    public Handout {
        crops = List.copyOf(crops);
        entries = List.copyOf(entries);
        without = List.copyOf(without);
        noted = List.copyOf(noted);
        copies = List.copyOf(copies);
    }

    /**
     * Its sheet in one language.
     *
     * @param largePrint name of the file of the same in large print, {@code poster} of its poster, {@code calendar} of
     *     its calendar; blank when there is none
     */
    public record Copy(String language, String file, String largePrint, String poster, String calendar) {
    }
}
