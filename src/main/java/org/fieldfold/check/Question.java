package org.fieldfold.check;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/**
 * A part of what rules ask that can be asked by itself.
 *
 * @param name what tells it from all others, as in {@code sample-unsure pests/leek-moth}
 * @param rules that are put
 */
record Question(String name, List<? extends Rule> rules, Asking asking) {
    /** Asks; it reads the base that it is given and no other. */
    interface Asking {
        void ask(ContentBase base, LocalDate asOf, Consumer<Finding> found);
    }

    void ask(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        asking.ask(base, asOf, found);
    }
}
