package org.fieldfold.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names invented for this test, written as the names of products are: common practice, no source. */
class BrandLikeNameTest {
    @ParameterizedTest
    @ValueSource(strings = {"Fieldol 50WP", "use Fieldol 2.5 EC", "Vinex®", "Vinex(R)", "Vinex(TM) works",
            "Leafguard™",
        "Row-Clean 480 SC", "Grubban 80WDG", "MORTHEX 1.9EC"})
    void findsWhatLooksLikeAProduct(String words) {
        assertTrue(BrandLikeName.in(words).isPresent(), words);
    }

    @ParameterizedTest
    @ValueSource(strings = {"spinosad", "Bacillus thuringiensis kurstaki", "Trichoplusia ni (Hübner, [1803])",
        "group 4A", "BBCH 60-69", "by May 10; ECB moths fly", "Blue Hubbard squash", "above 85 °F",
        "In July 90 F is hot",
        "2 EC", "a 50 WP label", "Wisconsin XHT1087", "page 12 SCouting"})
    void letsPlainNamesPass(String words) {
        assertEquals(Optional.empty(), BrandLikeName.in(words), words);
    }

    /** A word without end: searched anew from each of its letters it would take hours. */
    @Test
    void aWordWithoutEndIsSearchedOnce() {
        org.junit.jupiter.api.Assertions.assertTimeoutPreemptively(java.time.Duration.ofMinutes(2), () -> {
            assertEquals(Optional.empty(), BrandLikeName.in("[".repeat(150_000)));
            assertEquals(Optional.empty(), BrandLikeName.in("A-".repeat(75_000)));
        });
    }
}
