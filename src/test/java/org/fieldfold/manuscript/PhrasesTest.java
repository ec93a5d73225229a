package org.fieldfold.manuscript;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every language says everything that English says. */
class PhrasesTest {
    private static final Path FOLDER = Path.of("src/main/resources/org/fieldfold/manuscript");
    private static final Pattern PLACE = Pattern.compile("\\{\\d\\}");

    private static Properties read(Path file) throws IOException {
        Properties words = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            words.load(reader);
        }
        return words;
    }

    private static Set<String> untranslated() throws IOException {
        return new TreeSet<>(Files.readAllLines(Path.of("src/main/resources/org/fieldfold/manuscript/"
                + "phrases.es.untranslated")).stream().filter(line -> !line.isBlank()).toList());
    }

    @Test
    void theKeysAreTheSame() throws IOException {
        Set<String> expected = new TreeSet<>(read(FOLDER.resolve("phrases.en.properties"))
                .stringPropertyNames());
        Set<String> found = new TreeSet<>(read(FOLDER.resolve("phrases.es.properties")).stringPropertyNames());
        Set<String> extra = new TreeSet<>(found);
        extra.removeAll(expected);
        expected.removeAll(found);
        assertEquals(untranslated(), expected, "in English alone");
        assertEquals(Set.of(), extra, "in Spanish alone");
    }

    /** {@code {0}} and so on: a place that is left out is a fact that is left out. */
    @Test
    void thePlacesForNumbersAndNamesAreTheSame() throws IOException {
        Properties english = read(FOLDER.resolve("phrases.en.properties"));
        Properties spanish = read(FOLDER.resolve("phrases.es.properties"));
        for (String key : spanish.stringPropertyNames()) {
            assertEquals(places(english.getProperty(key)), places(spanish.getProperty(key)), key);
        }
    }

    private static List<String> places(String phrase) {
        return PLACE.matcher(phrase).results().map(found -> found.group()).sorted()
                .collect(Collectors.toList());
    }

    /** Order of day and month: Unicode CLDR 44, es-MX, 'long' dates; English en-US. */
    @Test
    void datesStandAsPeopleWriteThem() {
        LocalDate date = LocalDate.of(2028, 1, 31);
        assertEquals("31 de enero de 2028", Phrases.in("es").date(date));
        assertEquals("January 31, 2028", Phrases.in("en").date(date));
        assertEquals("1 de mayo", Phrases.in("es").day(MonthDay.of(5, 1)));
    }

    @Test
    void onlyLanguagesWithPhrasesAreSpoken() {
        assertTrue(Phrases.speaks("es") && !Phrases.speaks("xx"));
    }
}
