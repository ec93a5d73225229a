package org.fieldfold.scouting.sequential;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.function.ToIntFunction;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.distribution.PascalDistribution;
import org.apache.commons.math3.distribution.PoissonDistribution;
import org.fieldfold.scouting.sequential.CountModel.NegativeBinomial;
import org.fieldfold.scouting.sequential.CountModel.Poisson;
import org.fieldfold.scouting.sequential.CountModel.Presence;
import org.junit.jupiter.api.Test;

/** Exact characteristics against Apache Commons Math, a full enumeration, and simulated fields. */
class StopTableTest {
    private static StopRow row(int units, int low, int high) {
        return new StopRow(units, low < 0 ? OptionalInt.empty() : OptionalInt.of(low),
                high < 0 ? OptionalInt.empty() : OptionalInt.of(high));
    }

    @Test
    void aFixedSampleIsTheDistributionItself() {
        for (int act : new int[] {1, 4, 9}) {
            StopTable presence = new StopTable(new Presence(), List.of(row(30, act - 1, act)));
            StopTable random = new StopTable(new Poisson(), List.of(row(30, act - 1, act)));
            StopTable clumped = new StopTable(new NegativeBinomial(0.5), List.of(row(30, act - 1, act)));
            for (double density : new double[] {0.02, 0.13, 0.4, 0.9}) {
                assertEquals(new BinomialDistribution(30, density).cumulativeProbability(act - 1),
                        presence.in(density).chanceOfNotActing(), 1e-12);
                assertEquals(new PoissonDistribution(30 * density).cumulativeProbability(act - 1),
                        random.in(density).chanceOfNotActing(), 1e-12);
                // 30 units of k = 0.5 have k = 15 together; success share k / (k + mean)
                assertEquals(new PascalDistribution(15, 0.5 / (0.5 + density)).cumulativeProbability(act - 1),
                        clumped.in(density).chanceOfNotActing(), 1e-12);
                assertEquals(30, presence.in(density).unitsLookedAt(), 1e-9);
            }
        }
    }

    // the shape of a published plan, udel weeklycropupdate 17947: 15 strawberry clusters, none stop, 3 act,
    // else 5 more, up to 30; 4 of 30 acts (the rows at 20 and 25 are ours). Checked by going through every
    // way in which it can run.
    @Test
    void aGroupedPlanIsExact() {
        StopTable table = new StopTable(new Presence(), List.of(row(15, 0, 3), row(20, -1, 4), row(25, 1, 4),
                row(30, 3, 4)));
        for (double share : new double[] {0.01, 0.05, 0.13, 0.3}) {
            double[] expected = enumerate(table, share, 0, 0, 0);
            Outcome outcome = table.in(share);
            assertEquals(expected[0], outcome.chanceOfNotActing(), 1e-12);
            assertEquals(expected[1], outcome.unitsLookedAt(), 1e-9);
        }
    }

    /** Chance of stopping low and units looked at, from one row on. */
    private static double[] enumerate(StopTable table, double share, int at, int units, int total) {
        StopRow row = table.rows().get(at);
        BinomialDistribution more = new BinomialDistribution(row.units() - units, share);
        double holds = 0;
        double looked = 0;
        for (int found = 0; found <= row.units() - units; found++) {
            double chance = more.probability(found);
            int now = total + found;
            if (row.stopLow().isPresent() && now <= row.stopLow().getAsInt()) {
                holds += chance;
                looked += chance * row.units();
            } else if (row.stopHigh().isPresent() && now >= row.stopHigh().getAsInt()) {
                looked += chance * row.units();
            } else {
                double[] rest = enumerate(table, share, at + 1, row.units(), now);
                holds += chance * rest[0];
                looked += chance * rest[1];
            }
        }
        return new double[] {holds, looked};
    }

    private static final int FIELDS = 100_000;

    /** Simulated fields, one unit at a time; a fixed seed, and four standard errors of slack. */
    private static void assertSimulated(SequentialPlan plan, double density,
            ToIntFunction<SplittableRandom> unit) {
        SplittableRandom random = new SplittableRandom(20270401);
        StopTable table = plan.draft();
        int holds = 0;
        double looked = 0;
        double lookedSquared = 0;
        for (int field = 0; field < FIELDS; field++) {
            int units = 0;
            int total = 0;
            for (StopRow row : table.rows()) {
                for (; units < row.units(); units++) {
                    total += unit.applyAsInt(random);
                }
                if (row.stopsLow(total) || row.stopsHigh(total)) {
                    holds += row.stopsLow(total) ? 1 : 0;
                    break;
                }
            }
            looked += units;
            lookedSquared += (double) units * units;
        }
        Outcome exact = table.in(density);
        double share = exact.chanceOfNotActing();
        assertEquals((double) holds / FIELDS, share, 4 * Math.sqrt(share * (1 - share) / FIELDS) + 1e-9);
        double mean = looked / FIELDS;
        double error = Math.sqrt((lookedSquared / FIELDS - mean * mean) / FIELDS);
        assertEquals(mean, exact.unitsLookedAt(), 4 * error + 1e-9);
    }

    @Test
    void simulatedFieldsAgree() {
        SequentialPlan presence = new SequentialPlan(new Presence(), 0.10, 0.25, 0.1, 0.1, 10, 60, 5,
                AtMaximum.NEARER_LINE);
        SequentialPlan random = new SequentialPlan(new Poisson(), 1, 2, 0.1, 0.1, 3, 20, 1,
                AtMaximum.COUNT_AGAIN);
        SequentialPlan clumped = new SequentialPlan(new NegativeBinomial(1.5), 2, 3, 0.1, 0.1, 10, 60, 10,
                AtMaximum.ACT);
        for (double share : new double[] {0.1, 0.17, 0.25}) {
            assertSimulated(presence, share, source -> source.nextDouble() < share ? 1 : 0);
        }
        for (double mean : new double[] {1, 1.4, 2}) {
            assertSimulated(random, mean, source -> drawPoisson(source, mean));
        }
        for (double mean : new double[] {2, 2.5, 3}) {
            assertSimulated(clumped, mean, source -> drawClumped(source, mean, 1.5));
        }
    }

    private static int drawPoisson(SplittableRandom source, double mean) {
        double limit = Math.exp(-mean);
        double product = source.nextDouble();
        int drawn = 0;
        while (product > limit) {
            product *= source.nextDouble();
            drawn++;
        }
        return drawn;
    }

    /** By adding up the distribution from 0, with P(0) = (k / (k + m))^k. */
    private static int drawClumped(SplittableRandom source, double mean, double k) {
        double left = source.nextDouble();
        double chance = Math.pow(k / (k + mean), k);
        int drawn = 0;
        while (left >= chance && drawn < 10_000) {
            left -= chance;
            chance *= (k + drawn) / (drawn + 1) * mean / (mean + k);
            drawn++;
        }
        return drawn;
    }

    @Test
    void theLastRowDecides() {
        assertThrows(IllegalArgumentException.class,
                () -> new StopTable(new Presence(), List.of(row(10, 0, 3))));
        assertThrows(IllegalArgumentException.class, () -> row(10, 3, 3));
        StopLines lines = StopLines.of(new Presence(), 0.10, 0.25, 0.1, 0.1);
        // the lines at 30 units: 2.98 and 6.98
        int[] act = new int[3];
        for (AtMaximum rule : AtMaximum.values()) {
            act[rule.ordinal()] = StopTable.of(new Presence(), lines, 10, 30, 5, rule).rows().get(4)
                    .stopHigh()
                    .getAsInt();
        }
        assertEquals(List.of(3, 7, 5), List.of(act[0], act[1], act[2]));
    }

    @Test
    void withRoomToDecideItComesCloseToWald() {
        SequentialPlan wide = new SequentialPlan(new Poisson(), 1, 1.2, 0.1, 0.1, 1, 2000, 1,
                AtMaximum.NEARER_LINE);
        WaldApproximation low = WaldApproximation.at(1, new Poisson(), 1, 1.2, 0.1, 0.1);
        Outcome exact = wide.draft().in(1);
        assertEquals(low.chanceOfNotActing(), exact.chanceOfNotActing(), 0.02);
        // a total passes the low line by up to one pest, and the line drifts away from it by s - 1 a unit
        double drift = wide.lines().slope() - 1;
        assertTrue(exact.unitsLookedAt() > low.unitsLookedAt());
        assertTrue(exact.unitsLookedAt() < low.unitsLookedAt() + 1 / drift);
        assertTrue(exact.chanceOfNotActing() > low.chanceOfNotActing(),
                "overshooting a line errs on the safe side");
    }
}
