package org.fieldfold.scouting.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.distribution.HypergeometricDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.fieldfold.scouting.WholeCount;
import org.fieldfold.scouting.sample.Dispersion.Clumped;
import org.fieldfold.scouting.sample.Dispersion.PowerLaw;
import org.fieldfold.scouting.sample.Dispersion.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Sample sizes; where no page is named the values were worked out from the formulas with Python. */
class SampleSizeTest {
    @ParameterizedTest
    @EnumSource(Confidence.class)
    void quantilesAreThoseOfTheNormalDistribution(Confidence confidence) {
        assertEquals(new NormalDistribution().inverseCumulativeProbability(0.5 + confidence.level() / 2),
                confidence.z(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"1, 1, 4, .25, 1, 4, 4", "2, 1.5, .25, .25, 1, 64, 64", "2, 1.5, 1, .25, 1, 32, 32",
        "2, 1.5, 4, .25, 1, 16, 16", "2, 1.5, 1, .10, 1, 200, 200", "3.05, 1.02, 1, .25, 1, 48.8, 49",
        "2, 1.5, 1, .25, 1.96, 122.93, 123"})
    void powerLaw(double a, double b, double mean, double precision, double z, double exact, int whole) {
        double units = new PowerLaw(a, b).unitsForMean(mean, precision, z);
        assertEquals(exact, units, 0.0051);
        assertEquals(whole, WholeCount.up(units));
    }

    // scilit.com, abstract on the alfalfa weevil: 1,173 quadrats at a mean of 0.1, 95 %, 20 %. Any power law
    // with a * 0.1^(b - 2) = 12.2 must give that number.
    @Test
    void alfalfaWeevil() {
        double b = 1.4;
        double a = 12.2 * Math.pow(0.1, 2 - b);
        assertEquals(1173, new PowerLaw(a, b).unitsForMean(0.1, 0.2, 1.96), 3);
    }

    @ParameterizedTest
    @CsvSource({"1, 1, .25, 32", "2, .8, .25, 28", "5, 2, .10, 70"})
    void clumpedAndRandom(double mean, double k, double precision, int whole) {
        assertEquals(whole, WholeCount.up(new Clumped(k).unitsForMean(mean, precision, 1)));
        // Poisson: n = 1 / (m D^2), and the negative binomial without clumps
        double random = new Random().unitsForMean(mean, precision, 1);
        assertEquals(1 / (mean * precision * precision), random, 1e-9);
        assertEquals(random, new Clumped(1e12).unitsForMean(mean, precision, 1), 1e-6);
    }

    @Test
    void precisionReachedIsTheInverse() {
        PowerLaw law = new PowerLaw(2, 1.5);
        assertEquals(0.25, law.precision(1, 32, 1), 1e-12);
        assertEquals(0.25, new Clumped(0.8).precision(2, 28, 1), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({".1, .25, 144", ".2, .25, 64", ".05, .25, 304", ".5, .1, 100"})
    void shareRelative(double share, double precision, int whole) {
        assertEquals(whole, WholeCount.up(ShareSample.relative(share, precision)));
    }

    @ParameterizedTest
    @CsvSource({".5, .1, 96.04, 97", ".2, .05, 245.85, 246", ".1, .05, 138.29, 139"})
    void shareAbsolute(double share, double halfWidth, double exact, int whole) {
        double units = ShareSample.absolute(share, halfWidth, Confidence.PERCENT_95.z());
        assertEquals(exact, units, 0.011);
        assertEquals(whole, WholeCount.up(units));
    }

    // what-when-how.com, Introduction to Ecological Sampling, example 2.5: p = .325, N = 1000, d = .05, z =
    // 1.64 gives 190.9, say 191
    @Test
    void shareOfAFiniteField() {
        assertEquals(190.947, ShareSample.absoluteOf(1000, 0.325, 0.05, 1.64), 5.1e-4);
        assertEquals(191.889, ShareSample.absoluteOf(1000, 0.325, 0.05, 1.645), 5.1e-4);
    }

    @ParameterizedTest
    @CsvSource({".10, 29", ".05, 59", ".02, 149", ".01, 299"})
    void toFindOne(double share, int units) {
        assertEquals(units, ShareSample.toFindOne(share, 0.95));
        assertTrue(ShareSample.ruledOut(units, 0.95) <= share);
        assertTrue(ShareSample.ruledOut(units - 1, 0.95) > share);
    }

    @Test
    void toFindOneInAFiniteFieldIsHypergeometric() {
        for (int all : new int[] {10, 37, 200}) {
            for (int infested : new int[] {1, 3, 9}) {
                int units = ShareSample.toFindOneOf(all, infested, 0.95);
                assertTrue(new HypergeometricDistribution(all, infested, units)
                        .probability(0) <= 0.05 + 1e-12);
                assertTrue(new HypergeometricDistribution(all, infested, units - 1).probability(0) > 0.05);
            }
        }
        assertEquals(19, ShareSample.toFindOneOf(20, 1, 0.95));
    }

    @ParameterizedTest
    @CsvSource({".5, .39347", "1, .63212", "2, .86466"})
    void infestedAtRandom(double mean, double share) {
        assertEquals(share, new Random().infested(mean), 5.1e-6);
    }

    @ParameterizedTest
    @CsvSource({".5, 1, .33333", "1, 1, .5", "2, .8, .632933", "5, .8, .795011"})
    void infestedInClumps(double mean, double k, double share) {
        assertEquals(share, new Clumped(k).infested(mean), 5.1e-6);
    }

    // Wilson and Room 1983 (formula from memory)
    @ParameterizedTest
    @CsvSource({".5, .341869", "1, .5", "2, .679311", "4, .842510"})
    void infestedByThePowerLaw(double mean, double share) {
        assertEquals(share, new PowerLaw(2, 1.5).infested(mean), 5.1e-7);
        assertEquals(new Random().infested(mean), new PowerLaw(1, 1).infested(mean), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({".10, .10802", ".25, .39865", ".5, 1.25049", ".75, 3.07906", ".9, 5.95507"})
    void meanFromInfested(double share, double mean) {
        IncidenceCurve curve = new IncidenceCurve(0.7, 1.3);
        assertEquals(mean, curve.mean(share), 5.1e-6);
        assertEquals(share, curve.infested(curve.mean(share)), 1e-12);
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Clumped(-1));
        assertThrows(IllegalArgumentException.class, () -> new PowerLaw(2, 1.5).unitsForMean(0, 0.25, 1));
        assertThrows(IllegalArgumentException.class, () -> ShareSample.relative(0, 0.25));
        assertThrows(IllegalArgumentException.class, () -> ShareSample.absolute(0.2, 0, 1.96));
        assertThrows(IllegalArgumentException.class, () -> ShareSample.toFindOneOf(10, 11, 0.95));
    }
}
