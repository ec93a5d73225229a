package org.fieldfold.scouting.degreeday;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What a hole in the record does to a sum. The rule itself is our own; no source. */
class HeatSumTest {
    private static final HeatModel BASE_10 = HeatModel.singleSine(TemperatureUnit.CELSIUS, 10);

    private static LocalDate may(int day) {
        return LocalDate.of(2027, 5, day);
    }

    /** 1 to 10 May, minimum 10 + day, maximum 20 + day: day n gives 5 + n degree-days. */
    private static TemperatureRecord without(Integer... missing) {
        return new TemperatureRecord(TemperatureUnit.CELSIUS, IntStream.rangeClosed(1, 10)
                .filter(day -> !List.of(missing).contains(day))
                .mapToObj(day -> new DayTemperature(may(day), 10 + day, 20 + day)).toList());
    }

    @Test
    void oneOrTwoMissingDaysAreFilledOnAStraightLineAndCounted() {
        HeatSum whole = HeatSum.of(BASE_10, without(), may(1), may(10));
        assertEquals(105, whole.total(), 1e-9);
        HeatSum filled = HeatSum.of(BASE_10, without(3, 6, 7), may(1), may(10));
        assertEquals(105, filled.total(), 1e-9);
        assertEquals(3, filled.filledDays());
        assertTrue(filled.days().get(2).filled());
        assertFalse(filled.days().get(3).filled());
        assertEquals(Optional.empty(), filled.stoppedAt());
        assertEquals(new HeatDate.Reached(may(3), 21, 1), filled.reaching(21));
        assertEquals(List.of(new Gap(may(3), may(3)), new Gap(may(6), may(7))), without(3, 6, 7).gaps());
    }

    @Test
    void threeMissingDaysStopTheSumInsteadOfCountingAsCold() {
        HeatSum stopped = HeatSum.of(BASE_10, without(4, 5, 6), may(1), may(10));
        assertEquals(Optional.of(may(4)), stopped.stoppedAt());
        assertEquals(21, stopped.total(), 1e-9);
        assertEquals(new HeatDate.Unknown(may(4), stopped.total()), stopped.reaching(50));
        assertEquals(new HeatDate.Reached(may(2), stopped.days().get(1).total(), 0), stopped.reaching(13));
    }

    @Test
    void daysOutsideTheRecordAreNeverFilled() {
        assertEquals(Optional.of(may(11)), HeatSum.of(BASE_10, without(), may(1), may(12)).stoppedAt());
        HeatSum early = HeatSum.of(BASE_10, without(1), may(1), may(5));
        assertEquals(Optional.of(may(1)), early.stoppedAt());
        assertEquals(new HeatDate.Unknown(may(1), 0), early.reaching(5));
        // a hole before the start does not matter, and a filled day may be the start
        assertEquals(Optional.empty(), HeatSum.of(BASE_10, without(2, 3, 4), may(5), may(10)).stoppedAt());
        assertEquals(8, HeatSum.of(BASE_10, without(3), may(3), may(3)).total(), 1e-9);
    }

    @Test
    void aSeasonThatEndsTooSoonSaysSo() {
        assertEquals(new HeatDate.NotReached(may(10), 105, 0),
                HeatSum.of(BASE_10, without(), may(1), may(10)).reaching(106));
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> HeatSum.of(BASE_10, without(), may(2), may(1)));
        assertThrows(IllegalArgumentException.class, () -> new DayTemperature(may(1), 20, 10));
        assertThrows(IllegalArgumentException.class, () -> new TemperatureRecord(TemperatureUnit.CELSIUS,
                List.of(new DayTemperature(may(1), 1, 2), new DayTemperature(may(1), 1, 3))));
        assertEquals("upper threshold, which lies above the lower one, must be above 50, found 50",
                assertThrows(IllegalArgumentException.class,
                        () -> HeatModel.singleSine(TemperatureUnit.FAHRENHEIT, 50, 50)).getMessage());
    }
}
