package org.fieldfold.entry;

import java.util.List;

/** What a pest or a natural enemy is called. */
public record Names(
        @Describe("common name, as growers say it") @Translated String common,
        @Describe("genus, species and author, as in 'Leptinotarsa decemlineata (Say, 1824)'")
        String scientific,
        @Describe("family, as in Chrysomelidae") String family,
        @Describe("kind of animal, as in beetle, moth, fly, mite") @Translated String kind,
        @Describe("other names used in the region") @Translated(optional = true) List<String> local) {
}
