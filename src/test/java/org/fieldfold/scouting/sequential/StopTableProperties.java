package org.fieldfold.scouting.sequential;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class StopTableProperties {
    private static CountModel model(int kind, double k) {
        return kind == 0 ? new CountModel.Presence()
                : kind == 1 ? new CountModel.Poisson() : new CountModel.NegativeBinomial(k);
    }

    private static StopTable table(CountModel model, double low, double ratio, double alpha, double beta,
            int min, int steps, int step, AtMaximum rule) {
        double high = model instanceof CountModel.Presence ? Math.min(0.99, low * ratio) : low * ratio;
        return StopTable.of(model, StopLines.of(model, low, high, alpha, beta), min, min + steps * step, step,
                rule);
    }

    // StopRow refuses lines that cross, so that building the table is the check; the rest is asserted
    @Property(tries = 500)
    void linesNeverCrossNeverFallAndAMorePestFieldIsNeverSparedMore(@ForAll @IntRange(max = 2) int kind,
            @ForAll @DoubleRange(min = 0.2, max = 5) double k,
            @ForAll @DoubleRange(min = 0.02, max = 0.4) double low,
            @ForAll @DoubleRange(min = 1.2, max = 4) double ratio,
            @ForAll @DoubleRange(min = 0.01, max = 0.3) double alpha,
            @ForAll @DoubleRange(min = 0.01, max = 0.3) double beta,
                    @ForAll @IntRange(min = 1, max = 30) int min,
            @ForAll @IntRange(max = 12) int steps, @ForAll @IntRange(min = 1, max = 10) int step,
            @ForAll AtMaximum rule) {
        StopTable table = table(model(kind, k), low, ratio, alpha, beta, min, steps, step, rule);
        StopRow before = table.rows().get(0);
        for (StopRow row : table.rows()) {
            assertTrue(row.stopLow().orElse(0) >= before.stopLow().orElse(0), "low line falls");
            boolean last = row.units() == table.max();
            assertTrue(last || row.stopHigh().orElse(Integer.MAX_VALUE) >= before.stopHigh().orElse(0),
                    "high line falls");
            before = row;
        }
        double spared = 1;
        for (double density = low / 2; density < 0.95; density *= 1.5) {
            Outcome outcome = table.in(density);
            assertTrue(outcome.chanceOfNotActing() <= spared + 1e-9, "more pests, more often spared");
            assertTrue(outcome.unitsLookedAt() >= min - 1e-6 && outcome.unitsLookedAt() <= table.max()
                    + 1e-6);
            spared = outcome.chanceOfNotActing();
        }
    }
}
