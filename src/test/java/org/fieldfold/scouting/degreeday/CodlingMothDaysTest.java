package org.fieldfold.scouting.degreeday;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Days around the codling-moth thresholds of 50 and 88 °F (a public phenology page), each method and cutoff
 * worked out from the formulas with Python; days that touch a threshold must not fall into the wrong case.
 */
class CodlingMothDaysTest {
    private static double day(DegreeDayMethod method, Cutoff cutoff, double min, double max) {
        return new HeatModel(TemperatureUnit.FAHRENHEIT, 50, OptionalDouble.of(88), method, cutoff)
                .degreeDays(min, max);
    }

    @ParameterizedTest
    @CsvSource({
        "38, 49,  0, 0,      0, 0, 0,                         0, 0, 0",
        "40, 60,  0, 5,      3.1831, 3.1831, 3.1831,          2.5, 2.5, 2.5",
        "45, 75,  10, 12.5,  10.8816, 10.8816, 10.8816,       10.4167, 10.4167, 10.4167",
        "50, 88,  19, 19,    19, 19, 19,                      19, 19, 19",
        "55, 95,  25, 21.5,  23.7341, 22.4682, 13.2929,       24.3875, 23.775, 17.7375",
        "48, 100, 24, 19,    21.6594, 19.1516, 9.5372,        22.6538, 21.2692, 13.8846",
        "88, 95,  41.5, 38,  38, 34.5, 0,                     38, 34.5, 0",
        "90, 98,  44, 38,    38, 32, 0,                       38, 32, 0",
    })
    void everyMethodAndCutoff(double min, double max, double average, double modified, double sineH,
    double sineI,
            double sineV, double triH, double triI, double triV) {
        HeatModel plain = new HeatModel(TemperatureUnit.FAHRENHEIT, 50, OptionalDouble.empty(),
                DegreeDayMethod.SIMPLE_AVERAGE, Cutoff.HORIZONTAL);
        assertEquals(average, plain.degreeDays(min, max), 5.1e-5);
        assertEquals(modified, day(DegreeDayMethod.MODIFIED_AVERAGE, Cutoff.HORIZONTAL, min, max), 5.1e-5);
        assertEquals(sineH, day(DegreeDayMethod.SINGLE_SINE, Cutoff.HORIZONTAL, min, max), 5.1e-5);
        assertEquals(sineI, day(DegreeDayMethod.SINGLE_SINE, Cutoff.INTERMEDIATE, min, max), 5.1e-5);
        assertEquals(sineV, day(DegreeDayMethod.SINGLE_SINE, Cutoff.VERTICAL, min, max), 5.1e-5);
        assertEquals(triH, day(DegreeDayMethod.SINGLE_TRIANGLE, Cutoff.HORIZONTAL, min, max), 5.1e-5);
        assertEquals(triI, day(DegreeDayMethod.SINGLE_TRIANGLE, Cutoff.INTERMEDIATE, min, max), 5.1e-5);
        assertEquals(triV, day(DegreeDayMethod.SINGLE_TRIANGLE, Cutoff.VERTICAL, min, max), 5.1e-5);
    }
}
