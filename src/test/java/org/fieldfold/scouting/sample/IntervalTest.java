package org.fieldfold.scouting.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IntervalTest {
    private static final double Z95 = Confidence.PERCENT_95.z();

    // the first four are the cases of Newcombe 1998, Stat. Med. 17:857-872, Table I, Wilson row (value from
    // memory: .2553-.3662, .0624-.1605, .0000-.1611, .0061-.1718); the others worked out with Python
    @ParameterizedTest
    @CsvSource({"81, 263, .255289, .366210", "15, 148, .062386, .160487", "0, 20, 0, .161125",
        "1, 29, .006113, .171755", "23, 60, .270883, .509824", "4, 30, .053097, .296813", "0, 30, 0, .113513",
        "30, 30, .886487, 1"})
    void wilson95(int found, int units, double low, double high) {
        Interval interval = Interval.wilson(found, units, Z95);
        assertEquals(low, interval.low(), 5.1e-7);
        assertEquals(high, interval.high(), 5.1e-7);
    }

    // Apache Commons Math, WilsonScoreIntervalTest: 50 of 500 at 90 %; and a public Go test: 35 of 200, z =
    // 1.96
    @Test
    void wilsonElsewhere() {
        Interval commons = Interval.wilson(50, 500, Confidence.PERCENT_90.z());
        assertEquals(0.08003919, commons.low(), 1e-8);
        assertEquals(0.1242664, commons.high(), 1e-7);
        Interval go = Interval.wilson(35, 200, 1.96);
        assertEquals(0.12860441174608936, go.low(), 1e-14);
        assertEquals(0.23364549210081922, go.high(), 1e-14);
        Interval small = Interval.wilson(4, 20, Confidence.PERCENT_90.z());
        assertEquals(0.093118, small.low(), 5.1e-7);
        assertEquals(0.378377, small.high(), 5.1e-7);
    }
}
