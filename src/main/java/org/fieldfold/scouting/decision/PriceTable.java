package org.fieldfold.scouting.decision;

import java.util.List;
import org.fieldfold.scouting.Expect;

/**
 * Action thresholds over the value of the produce (across) and the cost of control (down).
 *
 * @param values of a unit of produce, rising
 * @param costs of one control, rising
 * @param rows one list a cost, one threshold a value, unrounded
 */
public record PriceTable(List<Double> values, List<Double> costs, List<List<Double>> rows) {
    public PriceTable {
        values = List.copyOf(values);
        costs = List.copyOf(costs);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** @param share of the injury level at which to act, above 0 and at most 1 */
    public static PriceTable of(InjuryLevel level, double share, List<Double> values, List<Double> costs) {
        rising(values, "values of the produce");
        rising(costs, "costs of control");
        return new PriceTable(values, costs, costs.stream().map(cost -> values.stream()
                .map(value -> level.at(cost, value).actionThreshold(share)).toList()).toList());
    }

    private static void rising(List<Double> numbers, String what) {
        Expect.atLeast(1, numbers.size(), "number of " + what);
        for (int i = 1; i < numbers.size(); i++) {
            Expect.above(numbers.get(i - 1), numbers.get(i), what + " must rise: number " + (i + 1));
        }
    }
}
