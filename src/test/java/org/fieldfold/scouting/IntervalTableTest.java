package org.fieldfold.scouting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.fieldfold.scouting.IntervalTable.Row;
import org.junit.jupiter.api.Test;

/** University of Connecticut, corn earworm moths per trap and night: days between treatments at silking. */
class IntervalTableTest {
    private static final IntervalTable EARWORM = new IntervalTable(List.of(new Row(0, 0.2, 0),
            new Row(0.2, 0.5, 6),
            new Row(0.5, 1, 5), new Row(1, 13, 4), new Row(13, Double.POSITIVE_INFINITY, 3)));

    @Test
    void aCatchStandsInExactlyOneRow() {
        assertEquals(List.of(), EARWORM.faults());
        assertEquals(0, EARWORM.row(0.1).orElseThrow().everyDays());
        assertEquals(6, EARWORM.row(0.2).orElseThrow().everyDays());
        assertEquals(5, EARWORM.row(0.5).orElseThrow().everyDays());
        assertEquals(4, EARWORM.row(12.9).orElseThrow().everyDays());
        assertEquals(3, EARWORM.row(200).orElseThrow().everyDays());
        assertEquals(Optional.empty(), EARWORM.row(-1));
    }

    @Test
    void holesOverlapsAndGrowingIntervalsAreNamed() {
        assertEquals(List.of("no row holds a catch from 1 to 2", "two rows hold a catch of 3",
                "a higher catch must not mean a longer interval: 4 days, then 5 from 3"),
                new IntervalTable(List.of(new Row(0, 1, 6), new Row(2, 4, 4), new Row(3, 9, 5))).faults());
    }
}
