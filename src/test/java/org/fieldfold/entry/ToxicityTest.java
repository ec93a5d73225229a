package org.fieldfold.entry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The routes of 40 CFR 156.62 and the signal words of 156.64 (a). */
class ToxicityTest {
    @ParameterizedTest
    @CsvSource({
        // 156.64 (a)(1)(i): category I by mouth, skin absorption or breath has 'Poison' as well
        "1,4,4,4,4,DANGER_POISON", "4,1,4,4,4,DANGER_POISON", "4,4,1,4,4,DANGER_POISON",
                "1,1,1,1,1,DANGER_POISON",
        // the same, but category I by irritation of eye or skin has not
        "4,4,4,1,4,DANGER", "4,4,4,4,1,DANGER", "2,2,2,1,1,DANGER",
        // (a)(1)(ii) and (iii): the most toxic route decides
        "2,4,4,4,4,WARNING", "3,3,3,3,2,WARNING", "3,4,4,4,4,CAUTION", "3,3,3,3,3,CAUTION",
                "4,4,4,4,3,CAUTION"})
    void section156_64TheMostToxicRouteGivesTheWord(int oral, int dermal, int inhalation, int eye, int skin,
            SignalWord word) {
        assertEquals(Optional.of(word), new Toxicity(oral, dermal, inhalation, eye, skin).signalWord());
    }

    @Test
    void section156_64CategoryFourNeedsNoWord() {
        assertEquals(Optional.empty(), new Toxicity(4, 4, 4, 4, 4).signalWord());
    }

    @Test
    void section156_62ThereAreFourCategories() {
        assertThrows(IllegalArgumentException.class, () -> new Toxicity(0, 4, 4, 4, 4));
        assertThrows(IllegalArgumentException.class, () -> new Toxicity(4, 4, 4, 4, 5));
    }
}
