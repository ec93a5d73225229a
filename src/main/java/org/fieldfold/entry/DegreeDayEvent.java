package org.fieldfold.entry;

import java.time.MonthDay;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fieldfold.scouting.degreeday.Cutoff;
import org.fieldfold.scouting.degreeday.DegreeDayMethod;
import org.fieldfold.scouting.degreeday.HeatModel;

/** An event that comes when enough warmth has been summed. */
public record DegreeDayEvent(
        @Describe("short key, so that another event of the season can name this one") Optional<String> key,
        @Describe("what happens, as in 'first eggs'") @Translated String event,
        @Describe("sum at which it happens, in degree-days of the unit") double sum,
        @Describe("lower threshold in the unit") double lower,
        @Describe("upper threshold in the unit, if there is one") Optional<Double> upper,
        @Describe("F or C") TemperatureUnit unit,
        @Describe("how the warmth of a day is estimated; single-sine when left out")
        Optional<DegreeDayMethod> method,
        @Describe("what warmth above the upper threshold does; horizontal when left out")
        Optional<Cutoff> cutoff,
        @Describe("true when a table of a day's degree-days by minimum and maximum is printed")
        Optional<Boolean> pocketTable,
        @Describe("day from which the sum runs, MM-DD; leave out when it runs from a biofix")
        Optional<MonthDay> start,
        @Describe("what starts the sum when it is not a date, as in 'first sustained catch'")
        @Translated Optional<String> biofix,
        @Describe("key of the event of this season that stands in for the biofix when dates are estimated")
        Optional<String> after,
        @Describe("id of the source") Optional<String> source) {
    /** Degrees Fahrenheit or Celsius. */
    public enum TemperatureUnit {
        F, C;

        public org.fieldfold.scouting.degreeday.TemperatureUnit scale() {
            return this == F ? org.fieldfold.scouting.degreeday.TemperatureUnit.FAHRENHEIT
                    : org.fieldfold.scouting.degreeday.TemperatureUnit.CELSIUS;
        }
    }

    /** How the warmth is summed; empty when its figures make no model, which is a check's business to say. */
    public Optional<HeatModel> model() {
        try {
            return Optional.of(new HeatModel(unit.scale(), lower, upper
                    .map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                    method.orElse(DegreeDayMethod.SINGLE_SINE), cutoff.orElse(Cutoff.HORIZONTAL)));
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }

    public boolean asksForTable() {
        return pocketTable.orElse(false);
    }
}
