package org.fieldfold.scouting.degreeday;

import static org.fieldfold.scouting.degreeday.TemperatureUnit.CELSIUS;
import static org.fieldfold.scouting.degreeday.TemperatureUnit.FAHRENHEIT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class TemperatureUnitTest {
    // peach twig borer (Zalom et al. 1992, J. Econ. Entomol. 85:1904): 1,080 °F-days = 600 °C-days, 400 = 222
    @Test
    void sumsConvertWithoutTheThirtyTwo() {
        assertEquals(600, FAHRENHEIT.differenceIn(CELSIUS, 1080), 1e-9);
        assertEquals(222, FAHRENHEIT.differenceIn(CELSIUS, 400), 0.5);
        assertEquals(1080, CELSIUS.differenceIn(FAHRENHEIT, 600), 1e-9);
        assertEquals(10, FAHRENHEIT.temperatureIn(CELSIUS, 50), 1e-12);
        assertEquals(50, CELSIUS.temperatureIn(FAHRENHEIT, 10), 1e-12);
        assertEquals(7, CELSIUS.differenceIn(CELSIUS, 7));
    }

    // orchard.uvm.edu, plum curculio: 171 °C-days are 308 °F-days; the 340 printed before (value from memory)
    // was 171 x 1.8 + 32
    @Test
    void aSumConvertedLikeATemperatureIsNoticed() {
        assertFalse(TemperatureUnit.convertedLikeTemperature(308, 171));
        assertTrue(TemperatureUnit.convertedLikeTemperature(340, 171));
    }
}
