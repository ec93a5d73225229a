package org.fieldfold.scouting.sequential;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.fieldfold.scouting.sequential.CountModel.NegativeBinomial;
import org.fieldfold.scouting.sequential.CountModel.Poisson;
import org.fieldfold.scouting.sequential.CountModel.Presence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Wald's curves, worked out from his parametric form with Python; the same form is in the source of CRAN
 * package Dodge, function SequentialBinomial. Points are found by their density.
 */
class WaldApproximationTest {
    /**
     * The parameter h at which the curve has {@code density}, found by halving; the density falls as h grows.
     */
    private static WaldApproximation at(double density, CountModel model, double... plan) {
        double below = -4;
        double above = 4;
        for (int i = 0; i < 200; i++) {
            double h = (below + above) / 2;
            if (WaldApproximation.at(h, model, plan[0], plan[1], plan[2], plan[3]).density() > density) {
                below = h;
            } else {
                above = h;
            }
        }
        return WaldApproximation.at((below + above) / 2, model, plan[0], plan[1], plan[2], plan[3]);
    }

    // the table gives densities to five or six digits, and the curve is steep: hence 1e-4
    @ParameterizedTest
    @CsvSource({".055, .987805, 17.5855", ".10, .9, 24.2585", ".13038, .75, 28.109", ".20615, .25, 24.8797",
        ".25, .1, 19.0377", ".34375, .012195, 10.9746"})
    void presence(double share, double holds, double looked) {
        WaldApproximation point = at(share, new Presence(), 0.10, 0.25, 0.1, 0.1);
        assertEquals(holds, point.chanceOfNotActing(), 1e-4);
        assertEquals(looked, point.unitsLookedAt(), 2e-3);
    }

    @Test
    void atTheSlopeItself() {
        WaldApproximation slope = WaldApproximation.at(0, new Presence(), 0.10, 0.25, 0.1, 0.1);
        assertEquals(0.165956, slope.density(), 5.1e-7);
        assertEquals(0.5, slope.chanceOfNotActing(), 1e-12);
        assertEquals(28.8987, slope.unitsLookedAt(), 5.1e-5);
        WaldApproximation nist = WaldApproximation.at(0, new Presence(), 0.01, 0.10, 0.05, 0.10);
        assertEquals(0.039747, nist.density(), 5.1e-7);
        assertEquals(0.562147, nist.chanceOfNotActing(), 5.1e-7);
        assertEquals(29.6504, nist.unitsLookedAt(), 5.1e-5);
        assertEquals(6.9650, WaldApproximation.at(0, new Poisson(), 1, 2, 0.1, 0.1).unitsLookedAt(), 5.1e-5);
    }

    @Test
    void atTheDeclaredDensities() {
        WaldApproximation low = WaldApproximation.at(1, new Presence(), 0.01, 0.10, 0.05, 0.10);
        assertEquals(0.01, low.density(), 1e-12);
        assertEquals(0.95, low.chanceOfNotActing(), 1e-12);
        assertEquals(27.957, low.unitsLookedAt(), 5.1e-4);
        WaldApproximation high = WaldApproximation.at(-1, new Presence(), 0.01, 0.10, 0.05, 0.10);
        assertEquals(0.10, high.density(), 1e-12);
        assertEquals(0.10, high.chanceOfNotActing(), 1e-12);
        assertEquals(16.4467, high.unitsLookedAt(), 5.1e-5);
    }

    @ParameterizedTest
    @CsvSource({"1, .9, 5.7284", "1.207107, .75, 6.7277", "1.707107, .25, 5.9943", "2, .1, 4.5504"})
    void poisson(double mean, double holds, double looked) {
        WaldApproximation point = at(mean, new Poisson(), 1, 2, 0.1, 0.1);
        assertEquals(holds, point.chanceOfNotActing(), 1e-5);
        assertEquals(looked, point.unitsLookedAt(), 1e-4);
    }

    @Test
    void clumpedCurvePassesThroughItsDeclaredPointsAndTendsToPoisson() {
        WaldApproximation high = WaldApproximation.at(-1, new NegativeBinomial(1.5), 2, 3, 0.1, 0.2);
        assertEquals(3, high.density(), 1e-9);
        assertEquals(0.2, high.chanceOfNotActing(), 1e-9);
        WaldApproximation loose = WaldApproximation.at(0.5, new NegativeBinomial(1e8), 1, 2, 0.1, 0.1);
        WaldApproximation random = WaldApproximation.at(0.5, new Poisson(), 1, 2, 0.1, 0.1);
        assertEquals(random.density(), loose.density(), 1e-6);
        assertEquals(random.unitsLookedAt(), loose.unitsLookedAt(), 1e-5);
    }
}
