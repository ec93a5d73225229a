package org.fieldfold.pack;

import java.util.List;
import org.fieldfold.fold.Imposition;

/**
 * One guide at the counter, in each language that the office prints.
 *
 * @param without names of the entries that this office leaves out
 * @param noted names of those on which it has a note of its own
 */
public record Handout(String title, String purpose, List<String> without, List<String> noted,
        Imposition sheet, List<Copy> copies) {
    public Handout {
        without = List.copyOf(without);
        noted = List.copyOf(noted);
        copies = List.copyOf(copies);
    }

    /**
     * Its sheet in one language.
     *
     * @param calendar name of its calendar file; blank when there is none
     */
    public record Copy(String language, String file, String calendar) {
    }
}
