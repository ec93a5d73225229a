package org.fieldfold.scouting.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CatchTestTest {
    // lsuagcenter.com, 'Ounces equal gallons': distances for nozzle spacings, from 340 sq ft rounded to the
    // foot
    @ParameterizedTest
    @CsvSource({"30, 136", "28, 146", "26, 157", "24, 170", "22, 185", "20, 204", "18, 227", "16, 255",
            "14, 291",
        "12, 340", "10, 408"})
    void stripForANozzleSpacing(double inches, double feet) {
        assertEquals(feet, CatchTest.stripFeet(inches) * 340 / CatchTest.stripArea(), 0.5);
    }

    // the same page: 14 oz from both nozzles of a 40 in row over 102 ft are 14 gallons an acre. larimer.org:
    // a square of 18.5 ft
    @Test
    void ouncesAreGallons() {
        assertEquals(102, CatchTest.stripFeet(40), 0.1);
        assertEquals(14, CatchTest.gallonsOfWaterPerAcre(14, 102, 40), 0.02);
        assertEquals(18.448, Math.sqrt(CatchTest.stripArea()), 5.1e-4);
        for (double inches = 10; inches < 80; inches += 7) {
            assertEquals(23, CatchTest.gallonsOfWaterPerAcre(23, CatchTest.stripFeet(inches), inches), 1e-9);
        }
    }

    // ufdcimages.uflib.ufl.edu: 26 oz over 300 ft on a 12 in band, 29.5; 16 oz on 15 in, 14.5 (over 300 ft:
    // 14.52)
    @Test
    void anyStrip() {
        assertEquals(29.494, CatchTest.gallonsOfWaterPerAcre(26, 300, 12), 5.1e-3);
        assertEquals(14.52, CatchTest.gallonsOfWaterPerAcre(16, 300, 15), 5.1e-3);
        // baileyseed.com: gallons x 66 / swath in feet over 660 ft
        assertEquals(2.0 * 66 / 20, CatchTest.gallonsOfWaterPerAcre(2 * 128, 660, 240), 1e-9);
        // lists.ibiblio.org: 1.5 gallons on 1,000 sq ft are 65 an acre
        assertEquals(65.34, CatchTest.gallonsOfWaterPerAcre(1.5 * 128, 100, 120), 5.1e-3);
    }

    // the constant 5,940 of the nozzle formula (value from memory): 20 gal/acre, 4 mph, 20 in: .26936 gal a
    // minute
    @Test
    void timeToCoverAnAcre() {
        assertEquals(0.26936, 20 / CatchTest.minutesPerAcre(4, 20), 5.1e-6);
        assertEquals(5940, CatchTest.minutesPerAcre(1, 1), 1e-9);
    }

    // by the international foot and inch
    @Test
    void rowsAndPlants() {
        assertEquals(17_424, CatchTest.rowFeetPerAcre(30), 1e-9);
        assertEquals(14_520, CatchTest.rowFeetPerAcre(36), 1e-9);
        assertEquals(14_520, CatchTest.plantsPerAcre(12, 36), 1e-9);
        assertEquals(CatchTest.SQUARE_METRES_PER_ACRE, 43_560 * 0.3048 * 0.3048, 1e-9);
    }
}
