package org.fieldfold.scouting.degreeday;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** Days in a row without a record, both included. */
public record Gap(LocalDate first, LocalDate last) {
    public Gap {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("a gap must not end before it begins: " + first + " to "
                    + last);
        }
    }

    public int days() {
        return (int) ChronoUnit.DAYS.between(first, last) + 1;
    }
}
