package org.fieldfold.manuscript;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.translation.TranslatedBase;
import org.junit.jupiter.api.Test;

class AlphabetTest {
    private static void assertOrder(String language, String... names) {
        List<String> mixed = new ArrayList<>(List.of(names));
        Collections.shuffle(mixed, new Random(3));
        mixed.sort(Alphabet.of(language));
        assertEquals(List.of(names), mixed, language);
    }

    /** Real Academia Española, Ortografía de la lengua española (2010): 27 letters, ñ behind n; from memory. */
    @Test
    void spanishHasALetterMoreAndAccentsMakeNone() {
        assertOrder("es", "ácaro", "Araña", "Calabacín", "Calabaza", "Chile", "Col", "Ejote", "nuez", "ñame", "oca");
        assertOrder("es", "cana", "canto", "caña");
        assertOrder("en", "jalapeño", "jalapeno pepper", "jalapeños");
    }

    @Test
    void aShorterNameStandsBeforeALongerOne() {
        assertOrder("en", "Onion", "onion maggot", "Onion thrips", "Onions", "Two-spotted mite", "Twospot");
    }

    @Test
    void readersFindCropsAndEntriesByTheNameTheySee() throws IOException {
        ContentBase base = BaseLoader.load(Path.of("content")).base().orElseThrow();
        List<String> crops = Alphabet.of("en").order(base).crops().values().stream()
                .map(crop -> crop.value().name()).toList();
        assertTrue(crops.indexOf("broccoli") >= 0 && crops.indexOf("broccoli") < crops.indexOf("snap bean"),
                crops.toString());
        ContentBase said = Alphabet.of("es").order(TranslatedBase.in(base, "es"));
        List<String> pests = said.pests().values().stream().map(pest -> pest.value().names().common()).toList();
        assertEquals(base.pests().size(), pests.size());
        assertTrue(pests.get(0).startsWith("ácaro"), pests.toString());
        assertTrue(pests.get(pests.size() - 1).startsWith("trips"), pests.toString());
        base.pests().keySet().forEach(id -> assertEquals(id, said.pests().get(id).value().id()));
        assertEquals(null, said.pests().get("no-such-pest"));
    }
}
