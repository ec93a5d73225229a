package org.fieldfold.typeset;

import java.util.Optional;
import java.util.OptionalLong;
import org.fieldfold.manuscript.Section;

/**
 * What trials came to before: one whose answer is known is not made again, so that of a guide of which one section
 * has changed hardly more is set than that section. A trial that leaves something to be said is made every time.
 */
public interface Trials {
    /** Remembers nothing. */
    Trials NONE = new Trials() {
        @Override
        public Optional<String> name(Section section) {
            return Optional.empty();
        }

        @Override
        public OptionalLong answer(Trial trial) {
            return OptionalLong.empty();
        }

        @Override
        public void learn(Trial trial, long answer) {
            // it is found out again
        }
    };

    /**
     * The name under which trials speak of a section: that of no section that says anything else or shows other
     * drawings. Empty where nothing is to be remembered of it.
     */
    Optional<String> name(Section section);

    /** The answer that was learnt. */
    OptionalLong answer(Trial trial);

    void learn(Trial trial, long answer);
}
