package org.fieldfold.scouting.degreeday;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Days written down by hand; the sum of a whole record is held to {@link HeatSum}, held to published tables. */
class HandSumTest {
    private static final LocalDate START = LocalDate.of(2027, 3, 1);
    private static final HeatModel MOTH = HeatModel.singleSine(TemperatureUnit.FAHRENHEIT, 50, 88);

    private static List<DayTemperature> season(int days) {
        Random random = new Random(811);
        List<DayTemperature> season = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            double min = -5 + 20 * random.nextDouble();
            season.add(new DayTemperature(START.plusDays(day), min, min + 18 * random.nextDouble()));
        }
        return season;
    }

    @Test
    void aWholeRecordSumsAsAStationsDoes() {
        for (DegreeDayMethod method : DegreeDayMethod.values()) {
            HeatModel model = new HeatModel(TemperatureUnit.FAHRENHEIT, 43, MOTH.upper(), method, Cutoff.HORIZONTAL);
            List<DayTemperature> season = season(90);
            HeatSum station = HeatSum.of(model, new TemperatureRecord(TemperatureUnit.CELSIUS, season), START,
                    START.plusDays(89));
            Collections.shuffle(season, new Random(1));
            HandSum hand = HandSum.of(model, TemperatureUnit.CELSIUS, season, START);
            assertEquals(station.total(), hand.total(), 1e-9, method.name());
            assertEquals(90, hand.days());
            assertEquals(0, hand.missing());
        }
    }

    @Test
    void aMissingDayIsCountedAndIsNoZero() {
        List<DayTemperature> season = season(30);
        season.subList(10, 13).clear();
        HandSum hand = HandSum.of(MOTH, TemperatureUnit.CELSIUS, season, START);
        assertEquals(27, hand.days());
        assertEquals(3, hand.missing());
        assertEquals(HandSum.Word.REACHED, hand.says(hand.total()));
        assertEquals(HandSum.Word.UNKNOWN, hand.says(hand.total() + 0.1));
        assertEquals(HandSum.Word.NOT_YET, HandSum.of(MOTH, TemperatureUnit.CELSIUS, season(30), START).says(1e6));
    }

    @Test
    void daysBeforeTheStartAreLeftOutAndTheFirstOnesMayBeMissing() {
        HandSum hand = HandSum.of(MOTH, TemperatureUnit.FAHRENHEIT, List.of(new DayTemperature(START, 60, 80),
                new DayTemperature(START.plusDays(4), 60, 80)), START.plusDays(2));
        // single sine wholly between the thresholds: the mean above the lower one, 70 - 50 (Baskerville and Emin 1969)
        assertEquals(new HandSum(20, 1, 2), hand);
        assertEquals(new HandSum(0, 0, 0), HandSum.of(MOTH, TemperatureUnit.FAHRENHEIT, List.of(), START));
        assertEquals(HandSum.Word.UNKNOWN, new HandSum(0, 0, 0).says(1));
        assertThrows(IllegalArgumentException.class, () -> HandSum.of(MOTH, TemperatureUnit.FAHRENHEIT,
                List.of(new DayTemperature(START, 1, 2), new DayTemperature(START, 1, 2)), START));
    }
}
