package org.fieldfold.edition;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One entry that waits for somebody.
 *
 * @param file in which it stands
 * @param reviewer who signed it last, and so is asked first; empty where nobody did
 * @param unsigned whether the edition cannot be issued before it is signed
 * @param insecticide whether it tells of an insecticide
 * @param reasons the gravest first; at least one
 */
public record Job(String id, String name, String file, Optional<String> reviewer,
        Optional<LocalDate> lastRead, boolean unsigned, boolean insecticide, List<Why> reasons) {
    /**
     * One reason.
     *
     * @param detail what in particular; may be empty
     */
    public record Why(WorkReason reason, String detail) {
        public String sentence() {
            return reason.words() + (detail.isEmpty() ? "" : ": " + detail);
        }
    }

    public Job {
        reasons = List.copyOf(reasons);
        if (reasons.isEmpty()) {
            throw new IllegalArgumentException("expected a reason for " + id + ", found none");
        }
    }

    /** All reasons in a line. */
    public String why() {
        return reasons.stream().map(Why::sentence).collect(Collectors.joining("; "));
    }
}
