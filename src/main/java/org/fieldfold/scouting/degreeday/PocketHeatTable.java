package org.fieldfold.scouting.degreeday;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.fieldfold.scouting.Expect;

/**
 * Degree-days of a day by its minimum (across) and maximum (down), for whoever sums with a pencil.
 *
 * @param model a model of one day; the double methods count as their single ones, for the next day is not
 *     known yet
 * @param minima whole degrees of the model's unit, rising
 * @param maxima whole degrees of the model's unit, rising
 * @param rows one list a maximum, one cell a minimum; empty where the minimum would be above the maximum
 */
public record PocketHeatTable(HeatModel model, List<Integer> minima, List<Integer> maxima,
        List<List<OptionalDouble>> rows) {
    public PocketHeatTable {
        minima = List.copyOf(minima);
        maxima = List.copyOf(maxima);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** The table with every {@code step}-th degree from one limit to the other, both limits included. */
    public static PocketHeatTable of(HeatModel model, int minFrom, int minTo, int maxFrom, int maxTo,
            int step) {
        List<Integer> minima = steps(minFrom, minTo, step);
        List<Integer> maxima = steps(maxFrom, maxTo, step);
        List<List<OptionalDouble>> rows = maxima.stream()
                .map(max -> minima.stream().map(min -> cell(model, min, max)).toList()).toList();
        return new PocketHeatTable(model, minima, maxima, rows);
    }

    private static OptionalDouble cell(HeatModel model, int min, int max) {
        return min > max ? OptionalDouble.empty() : OptionalDouble.of(model.degreeDays(min, max));
    }

    private static List<Integer> steps(int from, int to, int step) {
        Expect.atLeast(1, step, "step between temperatures");
        Expect.atLeast(from, to, "last temperature of a table");
        Expect.atLeast(to / step - 100, from / step, "first temperature of a table of at most 100 steps");
        List<Integer> steps = new ArrayList<>();
        for (int degrees = from; degrees <= to; degrees += step) {
            steps.add(degrees);
        }
        return steps;
    }

    /** The cell to the nearest whole degree-day, halves up: what is set in print. */
    public OptionalInt whole(int row, int column) {
        OptionalDouble cell = rows.get(row).get(column);
        return cell.isPresent() ? OptionalInt.of((int) Math.floor(cell.getAsDouble() + 0.5))
                : OptionalInt.empty();
    }
}
