package org.fieldfold.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.report.Reading;
import org.fieldfold.report.ReadingRow;
import org.fieldfold.translation.TranslatedBase;
import org.junit.jupiter.api.Test;

/** The shipped guides ask for no more than they should; what is harder is named. */
class PlainLanguageTest {
    @Test
    void aHardTextIsNamedWithTheSentenceThatSpoilsIt() throws IOException {
        Reading reading = PlainLanguage.of(BaseLoader.load(Path.of("content")).base().orElseThrow(), "en");
        ReadingRow text = reading.texts().stream().filter(row -> row.what().contains("potato-leafhopper"))
                .findFirst().orElseThrow();
        assertEquals("Plant varieties that stand hopper feeding.", text.hard());
        assertEquals(8.38, text.measure(), 0.005, "6 words of 11 syllables: 2.34 + 21.63 - 15.59");
    }

    @Test
    void theShippedGuidesArePlain() throws IOException {
        ContentBase base = BaseLoader.load(Path.of("content")).base().orElseThrow();
        for (String language : base.edition().value().languages()) {
            Reading reading = PlainLanguage.of(TranslatedBase.in(base, language), language);
            assertEquals(base.guides().size(), reading.guides().size());
            reading.guides().forEach(guide -> assertTrue(guide.plain(), guide.toString()));
            for (ReadingRow text : reading.texts()) {
                assertTrue(text.what().matches(".*\\.yaml:[0-9]+:[0-9]+ [a-z-]+"), text.what());
                assertTrue(!text.hard().isBlank(), text.what());
            }
        }
    }
}
