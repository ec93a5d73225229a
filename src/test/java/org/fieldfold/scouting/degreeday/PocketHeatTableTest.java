package org.fieldfold.scouting.degreeday;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class PocketHeatTableTest {
    // cells of CodlingMothDaysTest: 40 to 60 gives 3.18, 50 to 88 gives 19
    @Test
    void cellsAreTheModelRounded() {
        PocketHeatTable table = PocketHeatTable.of(HeatModel.singleSine(TemperatureUnit.FAHRENHEIT, 50, 88),
                40, 60, 52, 88, 4);
        assertEquals(List.of(40, 44, 48, 52, 56, 60), table.minima());
        assertEquals(10, table.maxima().size());
        assertEquals(OptionalInt.of(3), table.whole(table.maxima().indexOf(60), 0));
        assertEquals(3.1831, table.rows().get(2).get(0).getAsDouble(), 5e-5);
        assertEquals(OptionalInt.empty(), table.whole(0, 5));
        assertEquals(OptionalInt.of(2), table.whole(0, 3));
    }
}
