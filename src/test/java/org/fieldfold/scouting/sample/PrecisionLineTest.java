package org.fieldfold.scouting.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.fieldfold.scouting.sample.Dispersion.PowerLaw;
import org.fieldfold.scouting.sample.PrecisionLine.Green;
import org.fieldfold.scouting.sample.PrecisionLine.Kuno;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stop lines of Green, Kuno and Iwao (formulas from memory), values worked out from them with Python. */
class PrecisionLineTest {
    @ParameterizedTest
    @CsvSource({"2, 1.5, 10, 102.4", "2, 1.5, 20, 51.2", "2, 1.5, 30, 34.1333", "2, 1.5, 50, 20.48",
        "2, 1.5, 100, 10.24", "1, 1, 10, 16", "1, 1, 100, 16", "3.05, 1.02, 10, 50.4045",
        "3.05, 1.02, 50, 48.7758", "3.05, 1.02, 100, 48.0907"})
    void green(double a, double b, int units, double total) {
        assertEquals(total, new Green(new PowerLaw(a, b), 0.25).total(units), 5.1e-5);
    }

    // at the sample size for a mean, the line stands at that many units times the mean
    @Test
    void greenAgreesWithTheSampleSize() {
        PowerLaw law = new PowerLaw(2, 1.5);
        assertEquals(16, law.unitsForMean(4, 0.25, 1), 1e-9);
        assertEquals(64, new Green(law, 0.25).total(16), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> new Green(new PowerLaw(2, 2), 0.25));
    }

    @ParameterizedTest
    @CsvSource({"10, 35.2941", "20, 28.5714", "50, 25.641"})
    void kuno(int units, double total) {
        assertEquals(total, new Kuno(0.5, 1.2, 0.25).total(units), 5.1e-5);
    }

    @Test
    void kunoNeedsEnoughUnits() {
        assertEquals(Double.POSITIVE_INFINITY, new Kuno(0.5, 1.2, 0.25).total(3));
    }

    @ParameterizedTest
    @CsvSource({"1.96, 5, 1.4566, 18.5434", "1.96, 10, 7.9177, 32.0823", "1.96, 20, 22.9131, 57.0869",
        "1.96, 50, 72.9833, 127.0167", "1.96, 100, 161.7926, 238.2074", "1.645, 10, 9.8595, 30.1405",
        "1.645, 50, 77.3252, 122.6748"})
    void iwao(double t, int units, double low, double high) {
        Interval undecided = new ThresholdLines(2, 0.5, 1.2, t).undecided(units);
        assertEquals(low, undecided.low(), 5.1e-5);
        assertEquals(high, undecided.high(), 5.1e-5);
    }

    @Test
    void iwaoMostUnits() {
        assertEquals(58.3923, new ThresholdLines(2, 0.5, 1.2, 1.96).mostUnits(0.5), 5.1e-5);
        assertEquals(41.1316, new ThresholdLines(2, 0.5, 1.2, 1.645).mostUnits(0.5), 5.1e-5);
    }
}
