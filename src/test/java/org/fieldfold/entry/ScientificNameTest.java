package org.fieldfold.entry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** ICZN, 4th edition 1999, Articles 5, 27, 28, 51 and Recommendation 22A; names from published abstracts. */
class ScientificNameTest {
    @ParameterizedTest
    @ValueSource(strings = {"Leptinotarsa decemlineata (Say, 1824)", "Empoasca fabae (Harris)",
        "Ostrinia nubilalis (Hübner, 1796)", "Trichoplusia ni (Hübner, [1803])",
        "Thrips tabaci Lindeman, 1889", "Tetranychus urticae Koch, 1836", "Panonychus ulmi (C.L. Koch, 1836)",
        "Spodoptera frugiperda (J.E. Smith, 1797)", "Lygus lineolaris (Palisot de Beauvois, 1818)",
        "Trichogramma spp.", "Drosophila suzukii"})
    void readsNamesFormedAsTheCodeAsks(String written) {
        ScientificName name = ScientificName.read(written).orElseThrow();
        assertEquals(written, (name.binomen() + " " + name.authorityAndYear()).strip());
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "Thrips tabaci, Lindeman", // Art. 51.2: nothing between name and author
        "leptinotarsa decemlineata (Say)", // Art. 28: capital genus
        "Leptinotarsa Decemlineata (Say)", // Art. 28: lower-case species
        "Leptinotarsa 10-lineata (Say)", // Art. 32.5.2.6: numerals are spelled out
        "Leptinotarsa", // Art. 5: a species has two names
        "Psila rosæ (Fabricius)", // Art. 27: no ligatures or diacritics
        "Psila rosae (Fabricius", "Psila rosae Fabricius)"})
    void refusesNamesThatAreNot(String written) {
        assertTrue(ScientificName.read(written).isEmpty(), written);
    }

    @Test
    void parenthesesSayThatTheGenusChanged() {
        assertTrue(ScientificName.read("Myzus persicae (Sulzer, 1776)").orElseThrow().moved());
        assertEquals("Say", ScientificName.read("Anthonomus signatus Say, 1832").orElseThrow().authority());
    }
}
