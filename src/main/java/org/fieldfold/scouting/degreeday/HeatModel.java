package org.fieldfold.scouting.degreeday;

import java.util.OptionalDouble;
import org.fieldfold.scouting.Expect;

/**
 * How the heat that moves a pest along is summed.
 *
 * @param unit of both thresholds and of every result
 * @param lower threshold below which nothing develops
 * @param upper threshold above which {@code cutoff} applies; empty when none is known
 * @param cutoff only {@link Cutoff#HORIZONTAL} for the two averages, which know no course of the day
 */
public record HeatModel(TemperatureUnit unit, double lower, OptionalDouble upper, DegreeDayMethod method,
        Cutoff cutoff) {
    public HeatModel {
        Expect.finite(lower, "lower threshold");
        upper.ifPresent(u -> Expect.above(lower, u, "upper threshold, which lies above the lower one,"));
        if (!method.followsCurve() && cutoff != Cutoff.HORIZONTAL) {
            throw new IllegalArgumentException("an average knows only the horizontal cutoff, found "
                    + cutoff);
        }
    }

    /** A single sine with the upper threshold as a horizontal cutoff. */
    public static HeatModel singleSine(TemperatureUnit unit, double lower, double upper) {
        return new HeatModel(unit, lower, OptionalDouble.of(upper), DegreeDayMethod.SINGLE_SINE,
                Cutoff.HORIZONTAL);
    }

    /** A single sine without an upper threshold. */
    public static HeatModel singleSine(TemperatureUnit unit, double lower) {
        return new HeatModel(unit, lower, OptionalDouble.empty(), DegreeDayMethod.SINGLE_SINE,
                Cutoff.HORIZONTAL);
    }

    /** The same thresholds and rules in the other unit. */
    public HeatModel in(TemperatureUnit other) {
        OptionalDouble converted = upper.isEmpty() ? upper
                : OptionalDouble.of(unit.temperatureIn(other, upper.getAsDouble()));
        return new HeatModel(other, unit.temperatureIn(other, lower), converted, method, cutoff);
    }

    /**
     * Degree-days of one day, 0 or more.
     *
     * @param min lowest temperature of the day, in {@link #unit}
     * @param max highest temperature of the day, not below {@code min}
     * @param nextMin lowest temperature of the next day, not above {@code max} in a steady record; only the
     *     double methods look at it
     */
    public double degreeDays(double min, double max, double nextMin) {
        Expect.finite(nextMin, "next day's minimum");
        if (!(min <= max) || Double.isInfinite(min) || Double.isInfinite(max)) {
            throw new IllegalArgumentException("a day's minimum must not be above its maximum: " + min + ", "
                    + max);
        }
        return switch (method) {
            case SIMPLE_AVERAGE -> Math.max(0, cutAbove((min + max) / 2) - lower);
            case MODIFIED_AVERAGE -> (clip(min) + clip(max)) / 2 - lower;
            case SINGLE_TRIANGLE -> underCurve(DayCurve.TRIANGLE, min, max);
            case SINGLE_SINE -> underCurve(DayCurve.SINE, min, max);
            case DOUBLE_TRIANGLE -> doubled(DayCurve.TRIANGLE, min, max, nextMin);
            case DOUBLE_SINE -> doubled(DayCurve.SINE, min, max, nextMin);
        };
    }

    /** Degree-days of one day whose following night is as cold as the one before. */
    public double degreeDays(double min, double max) {
        return degreeDays(min, max, min);
    }

    private double doubled(DayCurve curve, double min, double max, double nextMin) {
        // a front can make the next night warmer than this day; its half then runs up instead of down
        double second = underCurve(curve, Math.min(nextMin, max), Math.max(nextMin, max));
        return (underCurve(curve, min, max) + second) / 2;
    }

    private double underCurve(DayCurve curve, double a, double b) {
        double heat = curve.heatAbove(lower, a, b);
        if (upper.isEmpty()) {
            return heat;
        }
        double u = upper.getAsDouble();
        double above = curve.heatAbove(u, a, b);
        return switch (cutoff) {
            case HORIZONTAL -> Math.max(0, heat - above);
            case INTERMEDIATE -> Math.max(0, heat - 2 * above);
            case VERTICAL -> Math.max(0, heat - above - (u - lower) * curve.shareAbove(u, a, b));
        };
    }

    private double cutAbove(double temperature) {
        return upper.isPresent() ? Math.min(temperature, upper.getAsDouble()) : temperature;
    }

    private double clip(double temperature) {
        return Math.max(lower, cutAbove(temperature));
    }
}
