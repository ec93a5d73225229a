package org.fieldfold.scouting.degreeday;

import java.time.LocalDate;

/** When a sum of degree-days was reached, or why that cannot be said. */
public sealed interface HeatDate {
    /**
     * The first day on which the sum stands at the target or above.
     *
     * @param total the sum at the end of that day
     * @param filledDays days up to it that were filled because the record lacks them
     */
    record Reached(LocalDate date, double total, int filledDays) implements HeatDate {
    }

    /**
     * The days that were asked for ended before.
     *
     * @param lastDay the last day summed
     * @param total the sum at the end of it
     */
    record NotReached(LocalDate lastDay, double total, int filledDays) implements HeatDate {
    }

    /**
     * The record lacks more days than may be filled, before the sum was reached.
     *
     * @param firstMissing the day at which the sum had to stop
     * @param total the sum up to the day before
     */
    record Unknown(LocalDate firstMissing, double total) implements HeatDate {
    }
}
