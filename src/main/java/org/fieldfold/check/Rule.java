package org.fieldfold.check;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/**
 * One question that is put to the whole content base. A rule keeps no state; the same base gives the same
 * findings. It reads the base that it is given and nothing else that may change: what it has read decides
 * whether its findings are kept.
 */
public interface Rule {
    /** Its name in findings and in {@code explain}: lower case with hyphens. */
    String id();

    /**
     * Puts the question.
     *
     * @param asOf what staleness is measured against
     * @param found takes each finding, in any order
     */
    void check(ContentBase base, LocalDate asOf, Consumer<Finding> found);
}
