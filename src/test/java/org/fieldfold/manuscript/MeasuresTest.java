package org.fieldfold.manuscript;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.fieldfold.entry.LengthUnit;
import org.fieldfold.entry.Units;
import org.fieldfold.scouting.degreeday.TemperatureUnit;
import org.junit.jupiter.api.Test;

/**
 * Factors: NIST Special Publication 811 (2008), appendix B.8: inch to metre 2.54 E-02 and foot to metre 3.048 E-01,
 * both exact; t/°F to t/°C (t - 32)/1.8; a difference of 1.8 °F is one of 1 °C. How far to round: section B.7, where a
 * converted value keeps the significant digits of its own, or one more (worded from memory).
 */
class MeasuresTest {
    private static Measures in(Units units) {
        return new Measures(Phrases.in("en"), Optional.ofNullable(units));
    }

    private static String said(String words) {
        return words.replace('\u00a0', ' ');
    }

    private static String size(double from, double to) {
        return said(in(Units.BOTH).size(from, to));
    }

    @Test
    void sizesAreReadOnARuler() {
        // 25.4 mm to the inch: 5/32 in = 3.97 mm, 1/4 in = 6.35 mm, 11/32 in = 8.73 mm, 1 3/16 in = 30.16 mm
        assertEquals("4 mm (5/32 in)", size(4, 4));
        assertEquals("6–9 mm (1/4–11/32 in)", size(6, 9));
        assertEquals("25.4 mm (1 in)", size(25.4, 25.4));
        assertEquals("30–102 mm (1 3/16–4 in)", size(30, 102));
        assertEquals("2 mm (5/64 in)", size(2, 2));
        // what is shorter than two sixty-fourths and a half has no mark on a ruler: 0.5 mm = 0.0197 in,
        // 14 mm = 0.551 in
        assertEquals("0.5–1.2 mm (0.02–0.047 in)", size(0.5, 1.2));
        assertEquals("1–14 mm (0.04–0.55 in)", size(1, 14));
    }

    @Test
    void everyFractionLiesWithinHalfAMarkOfTheLength() {
        for (double mm = 1.5; mm < 120; mm += 0.5) {
            String fraction = Inches.fraction(mm);
            double inches = 0;
            for (String part : fraction.split("\u00a0")) {
                String[] ends = part.split("/");
                inches += ends.length == 1 ? Double.parseDouble(part)
                        : Double.parseDouble(ends[0]) / Double.parseDouble(ends[1]);
            }
            double mark = mm < 25.4 / 8 ? 64 : mm < 25.4 / 2 ? 32 : mm < 101.6 ? 16 : 8;
            assertEquals(mm, inches * 25.4, 25.4 / mark / 2 + 1e-9, fraction);
        }
    }

    @Test
    void temperaturesConvertWithThe32AndSumsWithoutIt() {
        Measures both = in(Units.BOTH);
        assertEquals("50 °F (10 °C)", both.temperature(50, TemperatureUnit.FAHRENHEIT));
        assertEquals("3 °C (37.4 °F)", both.temperature(3, TemperatureUnit.CELSIUS));
        assertEquals("43 °F (6.1 °C)", both.temperature(43, TemperatureUnit.FAHRENHEIT));
        assertEquals("-40 °C (-40 °F)", both.temperature(-40, TemperatureUnit.CELSIUS));
        assertEquals("18 °F (10 °C)", both.gain(18, TemperatureUnit.FAHRENHEIT));
        assertEquals("250 °F-days (139 °C-days)", said(both.sum(250, TemperatureUnit.FAHRENHEIT)));
        assertEquals("361.8 °C-days (651.2 °F-days)", said(both.sum(361.8, TemperatureUnit.CELSIUS)));
    }

    @Test
    void lengthsOfStructuresAreNeverTooShortInEither() {
        Measures both = in(Units.BOTH);
        assertEquals("2.5 ft (0.76 m)", said(both.length(2.5, LengthUnit.FOOT)));
        assertEquals("30 m (98.4 ft)", said(both.length(30, LengthUnit.METRE)));
        // 4.93 ft = 1.5027 m: 5 ft and 1.6 m, and not the 1.52 m that the rounded feet would give
        assertEquals("5 ft (1.6 m)", said(both.enough(4.93, LengthUnit.FOOT)));
        assertEquals("1.3 mm (0.051 in)", said(both.hole(1.3)));
        // 0.85 mm = 0.03346 in: a larger hole would let it through
        assertEquals("0.85 mm (0.033 in)", said(both.largestHole(0.8599)));
        assertEquals("20 in (51 cm)", said(both.inches(20)));
        assertEquals("204 ft (62.2 m)", said(both.feet(204.19)));
    }

    @Test
    void eachReaderGetsTheirOwn() {
        assertEquals("6–9 mm", in(null).size(6, 9));
        assertEquals("6–9 mm", in(Units.METRIC).size(6, 9));
        assertEquals("1/4–11/32 in", said(in(Units.CUSTOMARY).size(6, 9)));
        assertEquals("50 °F", in(null).temperature(50, TemperatureUnit.FAHRENHEIT));
        assertEquals("10 °C", in(Units.METRIC).temperature(50, TemperatureUnit.FAHRENHEIT));
        assertEquals("3 °C", in(null).temperature(3, TemperatureUnit.CELSIUS));
        assertEquals("1/4–11/32 pulg", said(new Measures(Phrases.in("es"), Optional.of(Units.CUSTOMARY)).size(6, 9)));
    }
}
