package org.fieldfold.entry;

import java.time.MonthDay;
import java.util.Optional;

/** An event that comes when enough warmth has been summed. */
public record DegreeDayEvent(
        @Describe("what happens, as in 'first eggs'") String event,
        @Describe("sum at which it happens, in degree-days of the unit") double sum,
        @Describe("lower threshold in the unit") double lower,
        @Describe("upper threshold in the unit, if there is one") Optional<Double> upper,
        @Describe("F or C") TemperatureUnit unit,
        @Describe("day from which the sum runs, MM-DD; leave out when it runs from a biofix")
        Optional<MonthDay> start,
        @Describe("what starts the sum when it is not a date, as in 'first sustained catch'")
        Optional<String> biofix,
        @Describe("id of the source") Optional<String> source) {
    /** Degrees Fahrenheit or Celsius. */
    public enum TemperatureUnit { F, C }
}
