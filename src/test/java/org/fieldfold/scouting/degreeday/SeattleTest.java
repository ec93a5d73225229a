package org.fieldfold.scouting.degreeday;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sums and event dates on a real record, each value worked out independently with Python from the same rows.
 */
class SeattleTest {
    private static final TemperatureRecord SEATTLE = Seattle.record();

    private static HeatModel celsius(DegreeDayMethod method, double upper, Cutoff cutoff) {
        return new HeatModel(TemperatureUnit.CELSIUS, 10,
                upper > 0 ? OptionalDouble.of(upper) : OptionalDouble.empty(), method, cutoff);
    }

    private static final List<HeatModel> COLUMNS = List.of(
            celsius(DegreeDayMethod.SIMPLE_AVERAGE, 0, Cutoff.HORIZONTAL),
            celsius(DegreeDayMethod.MODIFIED_AVERAGE, 31, Cutoff.HORIZONTAL),
            celsius(DegreeDayMethod.SINGLE_SINE, 0, Cutoff.HORIZONTAL),
            celsius(DegreeDayMethod.SINGLE_SINE, (88 - 32) / 1.8, Cutoff.HORIZONTAL),
            celsius(DegreeDayMethod.DOUBLE_SINE, 0, Cutoff.HORIZONTAL),
            celsius(DegreeDayMethod.SINGLE_TRIANGLE, 0, Cutoff.HORIZONTAL),
            celsius(DegreeDayMethod.SINGLE_SINE, 25, Cutoff.VERTICAL));

    private static void assertSums(LocalDate from, LocalDate to, double... expected) {
        for (int column = 0; column < expected.length; column++) {
            double sum = HeatSum.of(COLUMNS.get(column), SEATTLE, from, to).total();
            assertEquals(expected[column], sum, 0.00051, "column " + column + " from " + from);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "1, 0, 1.15, 0.464, 0.464, 0.422, 0.260, 0.464",
        "2, 0, 5.65, 2.511, 2.511, 2.930, 1.531, 2.511",
        "3, 21.1, 46.2, 32.932, 32.932, 32.296, 28.543, 32.932",
        "4, 33.35, 65.9, 50.351, 50.351, 50.317, 44.957, 50.351",
        "5, 149.4, 160.9, 154.501, 154.501, 155.655, 152.576, 135.303",
        "6, 246.25, 244.8, 246.250, 245.758, 247.775, 246.250, 202.711",
        "7, 310.4, 309.8, 310.400, 310.347, 309.150, 310.400, 211.945",
        "8, 334.8, 334.75, 334.800, 334.800, 335.375, 334.800, 233.089",
        "9, 224.25, 224.5, 224.975, 224.499, 223.429, 224.669, 188.238",
        "10, 35.0, 67.0, 52.419, 52.419, 53.105, 47.300, 52.419",
        "11, 14.15, 34.75, 24.398, 24.398, 23.423, 20.936, 24.398",
        "12, 0.55, 3.65, 2.254, 2.254, 1.899, 1.751, 2.254",
    })
    void monthsOf2013(int month, double average, double modified, double sine, double sine88, double sine2,
            double triangle, double vertical) {
        YearMonth m = YearMonth.of(2013, month);
        assertSums(m.atDay(1), m.atEndOfMonth(), average, modified, sine, sine88, sine2, triangle, vertical);
    }

    @Test
    void wholeYears() {
        assertSums(LocalDate.of(2013, 1, 1), LocalDate.of(2013, 12, 31),
                1369.25, 1499.05, 1436.256, 1435.235, 1435.775, 1413.973, 1136.615);
        assertSums(LocalDate.of(2012, 1, 1), LocalDate.of(2012, 12, 31),
                1133.4, 1264.25, 1201.702, 1199.729, 1202.384, 1178.930, 1042.700);
    }

    // the events are those of A4: Michigan State University (codling moth), University of Minnesota and Univ.
    // Wisconsin XHT1087 (maggots); °F models run on the °C record without rounding
    @ParameterizedTest
    @CsvSource({
        "50, 88, 175, 2012-01-01, 2012-05-12, 101.867",
        "50, 88, 175, 2013-01-01, 2013-05-03, 99.015",
        "50, 88, 250, 2012-05-01, 2012-06-10, 140.376",
        "50, 88, 250, 2013-05-01, 2013-05-28, 143.301",
        "50, 88, 1060, 2012-05-01, 2012-08-09, 589.829",
        "50, 88, 1060, 2013-05-01, 2013-07-19, 591.807",
        "39, 84, 360, 2012-01-01, 2012-03-26, 201.027",
        "39, 84, 360, 2013-01-01, 2013-03-15, 200.517",
        "43, 0, 300, 2012-01-01, 2012-04-16, 168.751",
        "43, 0, 300, 2013-01-01, 2013-04-02, 167.964",
        "40, 0, 680, 2012-01-01, 2012-05-02, 380.455",
        "40, 0, 680, 2013-01-01, 2013-04-24, 384.718",
    })
    void eventDates(double lower, double upper, double target, LocalDate from, LocalDate date,
    double celsiusDays) {
        HeatModel model = upper > 0 ? HeatModel.singleSine(TemperatureUnit.FAHRENHEIT, lower, upper)
                : HeatModel.singleSine(TemperatureUnit.FAHRENHEIT, lower);
        HeatSum sum = HeatSum.of(model, SEATTLE, from, LocalDate.of(from.getYear(), 12, 31));
        HeatDate.Reached reached = (HeatDate.Reached) sum.reaching(target);
        assertEquals(date, reached.date());
        assertEquals(celsiusDays, reached.total() / 1.8, 0.00051);
        assertEquals(0, reached.filledDays());
    }

    // 31 December 2013 is the last row kept: its own minimum stands in for the next day's
    @Test
    void theLastDayOfARecordUsesItsOwnMinimum() {
        LocalDate last = LocalDate.of(2013, 12, 31);
        DayTemperature day = SEATTLE.day(last).orElseThrow();
        HeatModel model = new HeatModel(TemperatureUnit.CELSIUS, 2, OptionalDouble.empty(),
                DegreeDayMethod.DOUBLE_SINE, Cutoff.HORIZONTAL);
        assertEquals(model.degreeDays(day.min(), day.max()), HeatSum.of(model, SEATTLE, last, last).total(),
                1e-12);
    }
}
