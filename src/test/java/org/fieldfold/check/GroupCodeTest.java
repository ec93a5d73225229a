package org.fieldfold.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The mode-of-action classification of IRAC, version 11; the list of groups is a value from memory. */
class GroupCodeTest {
    private static final List<String> GROUPS = List.of("1A", "1B", "2A", "2B", "3A", "3B", "4A", "4B", "4C",
            "4D", "4E",
            "4F", "5", "6", "7A", "7B", "7C", "8A", "8B", "8C", "8D", "8E", "8F", "9B", "9D", "10A", "10B",
            "11A", "11B",
            "12A", "12B", "12C", "12D", "13", "14", "15", "16", "17", "18", "19", "20A", "20B", "20C", "20D",
            "21A", "21B",
            "22A", "22B", "23", "24A", "24B", "25A", "25B", "28", "29", "30", "31", "32", "33", "34", "35",
            "36", "37",
            "UN", "UNB", "UNE", "UNF", "UNM", "UNP", "UNV");

    @Test
    void knowsEveryPublishedGroup() {
        assertEquals(List.of(), GROUPS.stream().filter(code -> !GroupCode.wellFormed(code)).toList());
        assertTrue(GroupCode.wellFormed("none"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "4a", "4G", "A4", "0", "04A", "26", "27", "38", "UNX", "UNBB", "4 A", "M01",
            "un", "None",
        "4A, 5"})
    void refusesOthers(String code) {
        assertFalse(GroupCode.wellFormed(code), code);
        assertEquals(Optional.empty(), GroupCode.mainGroup(code), code);
    }

    /**
     * Neonicotinoids (4A) and sulfoximines (4C) act at one site; hydramethylnon (20A) and bifenazate (20D)
     * too.
     */
    @ParameterizedTest
    @CsvSource({"4A,4C", "20A,20D", "22A,22B", "3A,3B"})
    void subgroupsShareTheirMainNumber(String one, String other) {
        assertEquals(GroupCode.mainGroup(one), GroupCode.mainGroup(other));
    }

    @Test
    void differentNumbersAreDifferentModes() {
        assertEquals(Optional.of("4"), GroupCode.mainGroup("4A"));
        assertEquals(Optional.of("28"), GroupCode.mainGroup("28"));
        assertEquals(Optional.of("2"), GroupCode.mainGroup("2A"));
    }

    @Test
    void whatHasNoKnownSiteBindsNoRotation() {
        assertEquals(Optional.empty(), GroupCode.mainGroup("UN"));
        assertEquals(Optional.empty(), GroupCode.mainGroup("UNF"));
        assertEquals(Optional.empty(), GroupCode.mainGroup("none"));
    }
}
