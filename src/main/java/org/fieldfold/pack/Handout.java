package org.fieldfold.pack;

import java.util.List;
import org.fieldfold.fold.Imposition;

/** One guide at the counter, in each language that the office prints. */
public record Handout(String title, String purpose, Imposition sheet, List<Copy> copies) {
    public Handout {
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
