package org.fieldfold.scouting.sequential;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.fieldfold.scouting.Expect;
import org.fieldfold.scouting.WholeCount;

/**
 * A sequential plan as whole numbers: after so many units, stop at so few or so many. The last row always
 * decides.
 *
 * @param model how counts scatter
 * @param rows after rising numbers of units, at least one; in the last, {@code stopHigh} is one above
 *     {@code stopLow}
 */
public record StopTable(CountModel model, List<StopRow> rows) {
    public StopTable {
        rows = List.copyOf(rows);
        Expect.atLeast(1, rows.size(), "rows of a stop table");
        for (int i = 1; i < rows.size(); i++) {
            Expect.atLeast(rows.get(i - 1).units() + 1, rows.get(i).units(), "units in row " + (i + 1));
            Expect.atLeast(rows.get(i - 1).stopLow().orElse(0), rows.get(i).stopLow().orElse(0),
                    "total for stopping low in row " + (i + 1));
        }
        StopRow last = rows.get(rows.size() - 1);
        if (last.stopLow().isEmpty() || last.stopHigh().isEmpty()
                || last.stopHigh().getAsInt() != last.stopLow().getAsInt() + 1) {
            throw new IllegalArgumentException("the last row must decide every total, found " + last);
        }
    }

    /**
     * The table of Wald's lines, cut off at both ends. A total is never asked to be more than a unit can
     * show.
     *
     * @param min units before which nothing is decided, at least 1
     * @param max the largest sample; {@code max - min} is a whole number of steps
     * @param step units between two decisions, at least 1
     */
    public static StopTable of(CountModel model, StopLines lines, int min, int max, int step,
            AtMaximum atMaximum) {
        Expect.atLeast(1, min, "smallest sample");
        Expect.atLeast(min, max, "largest sample");
        Expect.atLeast(1, step, "units between two decisions");
        if ((max - min) % step != 0) {
            throw new IllegalArgumentException("the largest sample must lie whole steps of " + step
                    + " above " + min + ", found " + max);
        }
        List<StopRow> rows = new ArrayList<>();
        for (int units = min; units < max; units += step) {
            int low = WholeCount.down(lines.low(units));
            int high = WholeCount.up(lines.high(units));
            rows.add(new StopRow(units, low < 0 ? OptionalInt.empty() : OptionalInt.of(low),
                    model.isPossible(high, units) ? OptionalInt.of(high) : OptionalInt.empty()));
        }
        int act = Math.max(1, actAtMaximum(lines, max, atMaximum));
        rows.add(new StopRow(max, OptionalInt.of(act - 1), OptionalInt.of(act)));
        return new StopTable(model, rows);
    }

    private static int actAtMaximum(StopLines lines, int max, AtMaximum atMaximum) {
        return switch (atMaximum) {
            case ACT -> WholeCount.down(lines.low(max)) + 1;
            case COUNT_AGAIN -> WholeCount.up(lines.high(max));
            case NEARER_LINE -> WholeCount.up(lines.middle(max));
        };
    }

    /** The largest sample. */
    public int max() {
        return rows.get(rows.size() - 1).units();
    }

    /**
     * What the table does in a field of {@code density}: exact, by carrying the chance of every undecided
     * total from row to row.
     */
    public Outcome in(double density) {
        // totals at or above the last row's line always end high, so one place holds them all
        int cap = rows.stream().mapToInt(row -> row.stopHigh().orElse(0)).max().orElseThrow();
        double[] open = new double[cap + 1];
        open[0] = 1;
        double holds = 0;
        double looked = 0;
        int before = 0;
        for (StopRow row : rows) {
            open = add(open, model.totals(row.units() - before, density, cap));
            for (int total = 0; total <= cap; total++) {
                if (row.stopsLow(total) || row.stopsHigh(total)) {
                    holds += row.stopsLow(total) ? open[total] : 0;
                    looked += open[total] * row.units();
                    open[total] = 0;
                }
            }
            before = row.units();
        }
        return new Outcome(holds, looked);
    }

    private static double[] add(double[] open, double[] more) {
        int cap = open.length - 1;
        double[] sum = new double[cap + 1];
        for (int i = 0; i <= cap; i++) {
            if (open[i] > 0) {
                for (int j = 0; j <= cap; j++) {
                    sum[Math.min(cap, i + j)] += open[i] * more[j];
                }
            }
        }
        return sum;
    }
}
