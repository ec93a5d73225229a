package org.fieldfold.entry;

import java.time.LocalDate;
import java.util.Optional;

/** What something costs or brings, on which economic thresholds lean. */
public record Price(
        @Describe("short id") String id,
        @Describe("what is paid for, as in 'cabbage at the farm gate'") @Translated String what,
        @Describe("the amount, in the unit") double value,
        @Describe("money and what it is for, as in '$ per hundredweight'") @Translated String unit,
        @Describe("day on which it was looked up") LocalDate asOf,
        @Describe("id of the source") Optional<String> source) {
}
