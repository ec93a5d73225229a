package org.fieldfold.scouting.degreeday;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** What must hold on any day, and the closed forms against a sum over the day's curve in small steps. */
class HeatModelProperties {
    private static final int STEPS = 20_000;

    private static HeatModel model(double lower, double upper, DegreeDayMethod method, Cutoff cutoff) {
        return new HeatModel(TemperatureUnit.CELSIUS, lower, OptionalDouble.of(upper), method, cutoff);
    }

    private static boolean curved(DegreeDayMethod method) {
        return method.followsCurve();
    }

    @Property
    void cutoffsOnlyTakeAwayAndNothingIsNegative(@ForAll @DoubleRange(min = -20, max = 45) double min,
            @ForAll @DoubleRange(min = 0, max = 30) double range, @ForAll DegreeDayMethod method,
            @ForAll @DoubleRange(min = 0, max = 15) double lower,
            @ForAll @DoubleRange(min = 1, max = 30) double span) {
        Assume.that(curved(method));
        double max = min + range;
        double h = model(lower, lower + span, method, Cutoff.HORIZONTAL).degreeDays(min, max);
        double i = model(lower, lower + span, method, Cutoff.INTERMEDIATE).degreeDays(min, max);
        double v = model(lower, lower + span, method, Cutoff.VERTICAL).degreeDays(min, max);
        assertTrue(h >= i - 1e-12 && h >= v - 1e-12 && i >= 0 && v >= 0, h + " " + i + " " + v);
        assertTrue(h <= span + 1e-12, "no day gives more than upper minus lower");
    }

    @Property
    void insideTheThresholdsAllMethodsAgree(@ForAll @DoubleRange(min = 10, max = 20) double min,
            @ForAll @DoubleRange(min = 0, max = 11) double range, @ForAll DegreeDayMethod method,
            @ForAll Cutoff cutoff) {
        Assume.that(curved(method) || cutoff == Cutoff.HORIZONTAL);
        double max = min + range;
        assertEquals((min + max) / 2 - 10, model(10, 31, method, cutoff).degreeDays(min, max), 1e-9);
    }

    @Property
    void fahrenheitIsCelsiusTimesNineFifths(@ForAll @DoubleRange(min = -20, max = 45) double min,
            @ForAll @DoubleRange(min = 0, max = 30) double range, @ForAll DegreeDayMethod method,
            @ForAll Cutoff cutoff) {
        Assume.that(curved(method) || cutoff == Cutoff.HORIZONTAL);
        HeatModel celsius = model(10, 31, method, cutoff);
        HeatModel fahrenheit = celsius.in(TemperatureUnit.FAHRENHEIT);
        double inF = fahrenheit.degreeDays(min * 1.8 + 32, (min + range) * 1.8 + 32, (min + 1) * 1.8 + 32);
        assertEquals(celsius.degreeDays(min, min + range, min + 1), inF / 1.8, 1e-9);
    }

    @Property
    void aWarmerDayNeverGivesLessBelowAHorizontalCutoff(@ForAll @DoubleRange(min = -20, max = 45) double min,
            @ForAll @DoubleRange(min = 0, max = 30) double range, @ForAll DegreeDayMethod method,
            @ForAll @DoubleRange(min = 0, max = 5) double more) {
        HeatModel model = model(10, 31, method, Cutoff.HORIZONTAL);
        double base = model.degreeDays(min, min + range);
        assertTrue(model.degreeDays(min, min + range + more) >= base - 1e-9, "warmer noon");
        assertTrue(model.degreeDays(min + more, min + range + more) >= base - 1e-9, "warmer day");
    }

    @Property(tries = 200)
    void closedFormsAgreeWithTheDayInSmallSteps(@ForAll @DoubleRange(min = -10, max = 35) double min,
            @ForAll @DoubleRange(min = 0.5, max = 30) double range, @ForAll Cutoff cutoff) {
        double max = min + range;
        double sine = 0;
        double triangle = 0;
        for (int step = 0; step < STEPS; step++) {
            double phase = (step + 0.5) / STEPS;
            sine += rate((min + max) / 2 + range / 2 * Math.sin(Math.PI * (phase - 0.5)), cutoff) / STEPS;
            triangle += rate(min + range * phase, cutoff) / STEPS;
        }
        // a jump of the rate (vertical cutoff) costs up to one step of 21 degrees; the rest is far smaller
        double slack = cutoff == Cutoff.VERTICAL ? 21.0 / STEPS * 1.1 : 1e-6;
        if (cutoff == Cutoff.INTERMEDIATE) {
            sine = Math.max(0, sine);
            triangle = Math.max(0, triangle);
        }
        assertEquals(sine, model(10, 31, DegreeDayMethod.SINGLE_SINE, cutoff).degreeDays(min, max), slack);
        assertEquals(triangle, model(10, 31, DegreeDayMethod.SINGLE_TRIANGLE, cutoff).degreeDays(min, max),
                slack);
    }

    /**
     * The rate of development at one moment, 10 and 31 °C, straight from the words that define the cutoffs.
     */
    private static double rate(double t, Cutoff cutoff) {
        if (t <= 10) {
            return 0;
        }
        if (t <= 31) {
            return t - 10;
        }
        return switch (cutoff) {
            case HORIZONTAL -> 21;
            case INTERMEDIATE -> 21 - (t - 31);
            case VERTICAL -> 0;
        };
    }
}
