package org.fieldfold.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sentences of the kind that labels and guides print; what counts as a rate is common practice, no source.
 */
class PrintedRateTest {
    @ParameterizedTest
    @ValueSource(strings = {
        "Use 3 oz per acre.", "2 tablespoons to a gallon", "Mix 2 tbsp/gal and spray.",
                "1 1/2 pints per acre",
        "½ cup in a gallon of water", "one quart per 100 gallons", "10 ml in 1 liter", "25 fl oz/A",
        "0.5 lb per 100 gal", "2.5 kg/ha", "4-6 fl. oz. per acre",
        "a teaspoon of soap in a quart, or 5 ml per liter",
        "1 oz per 1,000 square feet", "five tablespoons of oil to the gallon", "Spray a 2 % soap solution.",
        "Use a 1 percent oil spray.", "Apply 200 g / ha.", "Water first. Then 3 OZ PER ACRE."})
    void findsARate(String sentence) {
        assertTrue(PrintedRate.in(sentence).isPresent(), sentence);
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "10 beetles per plant", "1 trap per 2.5 acres", "Plant ¼ mile from last year’s field.",
        "Count 25 adults on 50 plants.", "Act at 10 % leaf loss.", "1 moth per trap in 7 days", "2 to 3 days",
        "Read the rate on the label.", "Sow 3 lb of buckwheat per acre along the edge.",
        "Spread 2 gallons of compost on 10 square feet.", "A 5 gallon bucket holds the catch.",
        "Look at ten plants in each of 5 places.", "a row cover with 0.8 mm mesh", "15 °F warmer",
        "Larvae are 9 to 11 mm long.", "Put one card per 1000 sq ft.", "Cut 3 in. above the ground",
        "Wait 7 days per generation."})
    void letsACountADistanceOrSeedPass(String sentence) {
        assertEquals(Optional.empty(), PrintedRate.in(sentence), sentence);
    }
}
