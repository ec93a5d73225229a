package org.fieldfold.scouting.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class InjuryLevelTest {
    // North Carolina State University, economics of pest control: C $20, 800 insects take 10 % of $500 an
    // acre: 320
    @Test
    void northCarolinaTutorial() {
        assertEquals(320, new InjuryLevel(20, 500, 1, 0.10 / 800, 1).pests(), 1e-9);
    }

    // Lundin 2020, J. Econ. Entomol. 113(2): 19 kg/ha lost per percent injury, 39 % prevented, level 11 %
    // defoliation
    @Test
    void fleaBeetlesInOilseedRape() {
        assertEquals(11.0, new InjuryLevel(81.5, 1, 1, 19, 0.39).pests(), 0.0051);
    }

    // worked out from the formula with Python
    @Test
    void generic() {
        assertEquals(6.9444, new InjuryLevel(15, 6, 0.4, 1, 0.9).pests(), 5.1e-5);
        assertEquals(31.25, new InjuryLevel(12.5, 0.5, 1, 1, 0.8).pests(), 1e-12);
    }

    @Test
    void doublesWithCostAndHalvesWithValue() {
        InjuryLevel level = new InjuryLevel(15, 6, 0.4, 1, 0.9);
        assertEquals(2 * level.pests(), level.at(30, 6).pests(), 1e-12);
        assertEquals(level.pests() / 2, level.at(15, 12).pests(), 1e-12);
        assertEquals(0.75 * level.pests(), level.actionThreshold(0.75), 1e-12);
        assertEquals(0.5, InjuryLevel.moved(level.pests(), level.at(22.5, 6).pests()), 1e-12);
    }

    // Cornell crop adviser text CA0107: total control cost per acre over crop value per acre
    @Test
    void allowableLoss() {
        assertEquals(4, InjuryLevel.allowableLossPercent(20, 500), 1e-12);
    }

    @Test
    void tableOfPrices() {
        PriceTable table = PriceTable.of(new InjuryLevel(15, 6, 0.4, 1, 0.9), 0.8, List.of(6.0, 12.0),
                List.of(15.0, 30.0, 45.0));
        assertEquals(3, table.rows().size());
        assertEquals(0.8 * 6.9444, table.rows().get(0).get(0), 5e-5);
        assertEquals(table.rows().get(0).get(0), table.rows().get(1).get(1), 1e-12);
        assertThrows(IllegalArgumentException.class,
                () -> PriceTable.of(new InjuryLevel(15, 6, 0.4, 1, 0.9), 0.8, List.of(12.0, 6.0),
                List.of(1.0)));
    }

    @Test
    void nothingIsDividedByNothing() {
        assertEquals("value of the produce (V) must be above 0, found 0",
                assertThrows(IllegalArgumentException.class, () -> new InjuryLevel(15, 0, 1, 1, 1))
                .getMessage());
        assertEquals("share of injury prevented (K) must be above 0, found 0",
                assertThrows(IllegalArgumentException.class, () -> new InjuryLevel(15, 1, 1, 1, 0))
                .getMessage());
        assertThrows(IllegalArgumentException.class, () -> new InjuryLevel(15, 1, 1, 1, 1.1));
        assertThrows(IllegalArgumentException.class,
                () -> new InjuryLevel(15, 1, 1, 1, 1).actionThreshold(0));
    }
}
