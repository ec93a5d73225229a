package org.fieldfold.scouting.sequential;

import java.util.OptionalInt;

/**
 * One row of the table that goes to the field.
 *
 * @param units looked at so far
 * @param stopLow do not act when the running total is this or less; empty while it is too early for that
 * @param stopHigh act when the running total is this or more; empty while it is too early for that
 */
public record StopRow(int units, OptionalInt stopLow, OptionalInt stopHigh) {
    public StopRow {
        if (stopLow.isPresent() && stopHigh.isPresent() && stopLow.getAsInt() >= stopHigh.getAsInt()) {
            throw new IllegalArgumentException("the lines must not cross after " + units + " units: "
                    + stopLow.getAsInt() + " and " + stopHigh.getAsInt());
        }
    }

    boolean stopsLow(int total) {
        return stopLow.isPresent() && total <= stopLow.getAsInt();
    }

    boolean stopsHigh(int total) {
        return stopHigh.isPresent() && total >= stopHigh.getAsInt();
    }
}
