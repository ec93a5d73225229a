package org.fieldfold.manuscript;

import java.util.Optional;
import org.fieldfold.entry.LengthUnit;
import org.fieldfold.entry.Units;
import org.fieldfold.scouting.degreeday.TemperatureUnit;

/**
 * Says quantities in the units that a reader wants. Each is worked out from what the base holds, never from a figure
 * that was rounded before. In both systems the base's own comes first: {@code 4 mm (5/32 in)}, {@code 50 °F (10 °C)}.
 * Factors: NIST SP 811 (2008), appendix B.8: 1 in = 25.4 mm, 1 ft = 0.3048 m, t/°F = 1.8 t/°C + 32.
 */
public final class Measures {
    private static final double METRES_PER_FOOT = 0.3048;
    private static final double CM_PER_INCH = 2.54;
    private static final char NO_BREAK = '\u00a0';

    private final Phrases phrases;
    private final Optional<Units> units;

    /** @param units empty for each quantity in its own */
    Measures(Phrases phrases, Optional<Units> units) {
        this.phrases = phrases;
        this.units = units;
    }

    /** Lengths of an animal. */
    public String size(double fromMm, double toMm) {
        return either(true, Figures.range(fromMm, toMm) + " mm",
                Inches.range(fromMm, toMm) + NO_BREAK + phrases.say("unit.inch"));
    }

    /** The side of a hole. */
    String hole(double mm) {
        return either(true, Figures.plain(mm) + NO_BREAK + "mm",
                Inches.decimal(mm) + NO_BREAK + phrases.say("unit.inch"));
    }

    /** The side of a hole that may be smaller, but never larger: in both units down from what it is. */
    String largestHole(double mm) {
        return either(true, down(mm, 100) + NO_BREAK + "mm",
                down(mm / 25.4, 1000) + NO_BREAK + phrases.say("unit.inch"));
    }

    /** A temperature, to a tenth of a degree: half a degree of a threshold is a week of a spring's warmth. */
    public String temperature(double degrees, TemperatureUnit unit) {
        TemperatureUnit other = other(unit);
        return either(unit == TemperatureUnit.CELSIUS, degrees(degrees, unit),
                degrees(unit.temperatureIn(other, degrees), other));
    }

    /** A difference between temperatures. */
    String gain(double degrees, TemperatureUnit unit) {
        TemperatureUnit other = other(unit);
        return either(unit == TemperatureUnit.CELSIUS, degrees(degrees, unit),
                degrees(unit.differenceIn(other, degrees), other));
    }

    /** A sum of degree-days with its unit; no finer in the other unit than in its own. */
    public String sum(double sum, TemperatureUnit unit) {
        TemperatureUnit other = other(unit);
        return either(unit == TemperatureUnit.CELSIUS, Figures.plain(sum) + days(unit),
                otherSum(sum, unit) + days(other));
    }

    /** The sum alone, for a sentence that names the unit behind it; in both units the base's own. */
    String sumAlone(double sum, TemperatureUnit unit) {
        return tableUnit(unit) == unit ? Figures.plain(sum) : otherSum(sum, unit);
    }

    /** The temperature above which that sum counts; in both units with the other sum. */
    String lower(double sum, double degrees, TemperatureUnit unit) {
        TemperatureUnit first = tableUnit(unit);
        String own = degrees(unit.temperatureIn(first, degrees), first);
        return !both() ? own : own + phrases.say("degree-days.also", otherSum(sum, unit),
                degrees(unit.temperatureIn(other(unit), degrees), other(unit)));
    }

    /** A sum of the other unit, rounded like the one that it is made from. */
    static String otherSum(double sum, TemperatureUnit unit) {
        return Figures.rounded(unit.differenceIn(other(unit), sum), Figures.decimals(sum));
    }

    /** A length of a bed, a hoop or a field. */
    String length(double length, LengthUnit unit) {
        boolean metric = unit == LengthUnit.METRE;
        return either(metric, rounded(length, unit), rounded(inOther(length, unit), other(unit)));
    }

    /** The same where it must never be too short: a tenth more rather than less, in either unit. */
    String enough(double length, LengthUnit unit) {
        return either(unit == LengthUnit.METRE, rounded(up(length), unit),
                rounded(up(inOther(length, unit)), other(unit)));
    }

    /** A distance between nozzles. */
    String inches(int inches) {
        return either(false, inches + String.valueOf(NO_BREAK) + phrases.say("unit.inch"),
                Figures.rounded(inches * CM_PER_INCH, 0) + NO_BREAK + "cm");
    }

    /** A way to drive, in feet. */
    String feet(double feet) {
        return either(false, Figures.rounded(feet, 0) + NO_BREAK + phrases.word("unit", LengthUnit.FOOT),
                Figures.rounded(feet * METRES_PER_FOOT, 1) + NO_BREAK + phrases.word("unit", LengthUnit.METRE));
    }

    /** Whether tables that are made of one unit stand there twice. */
    boolean both() {
        return units.equals(Optional.of(Units.BOTH));
    }

    /** The unit of a table that is made of one, or of the first of two. */
    TemperatureUnit tableUnit(TemperatureUnit own) {
        return units.filter(asked -> asked != Units.BOTH).map(asked -> asked == Units.METRIC
                ? TemperatureUnit.CELSIUS : TemperatureUnit.FAHRENHEIT).orElse(own);
    }

    private String either(boolean metric, String own, String other) {
        Units wanted = units.orElse(metric ? Units.METRIC : Units.CUSTOMARY);
        if (wanted == Units.BOTH) {
            return own + " (" + other + ")";
        }
        return metric == (wanted == Units.METRIC) ? own : other;
    }

    static String degrees(double degrees, TemperatureUnit unit) {
        return Figures.rounded(degrees, 1) + " " + unit.symbol();
    }

    private String days(TemperatureUnit unit) {
        return NO_BREAK + phrases.say("unit.degree-days", unit.symbol());
    }

    private String rounded(double length, LengthUnit unit) {
        return Figures.rounded(length, length < 10 ? 2 : 1) + NO_BREAK + phrases.word("unit", unit);
    }

    private static double up(double length) {
        return StrictMath.ceil(length * 10 - 1e-6) / 10;
    }

    private static String down(double number, int parts) {
        return Figures.plain(StrictMath.floor(number * parts + 1e-6) / parts);
    }

    private static double inOther(double length, LengthUnit unit) {
        return unit == LengthUnit.FOOT ? length * METRES_PER_FOOT : length / METRES_PER_FOOT;
    }

    private static LengthUnit other(LengthUnit unit) {
        return unit == LengthUnit.FOOT ? LengthUnit.METRE : LengthUnit.FOOT;
    }

    static TemperatureUnit other(TemperatureUnit unit) {
        return unit == TemperatureUnit.CELSIUS ? TemperatureUnit.FAHRENHEIT : TemperatureUnit.CELSIUS;
    }
}
