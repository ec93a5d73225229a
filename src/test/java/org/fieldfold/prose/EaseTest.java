package org.fieldfold.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reading ease against published examples, and syllables against a pronouncing dictionary. */
class EaseTest {
    /** Sentences, words, syllables and grade; the first line is checked by hand, the second is widely quoted. */
    @ParameterizedTest
    @CsvSource({"5, 100, 150, 9.91", "10, 100, 130, 3.65", "1, 13, 24, 11.26", "1, 1, 1, -3.40",
        "1000, 5700, 5814, -1.33"})
    void gradesAreThoseOfTheFormula(int sentences, int words, int syllables, double grade) {
        // lowest grade -3.40 and 'Green Eggs and Ham' (5.7 words a sentence, 1.02 syllables a word) -1.3:
        // as quoted with the formula of Kincaid et al. 1975
        assertEquals(grade, new Ease(sentences, words, syllables).grade(), 0.005);
    }

    /** Fernández Huerta 1959, as corrected: syllables, words, sentences and ease, computed outside. */
    @ParameterizedTest
    @CsvSource({"200, 100, 5, 66.44", "210, 100, 8, 68.09", "180, 100, 10, 88.64"})
    void spanishEaseIsThatOfTheCorrectedFormula(int syllables, int words, int sentences, double ease) {
        assertEquals(ease, new Ease(sentences, words, syllables).spanishEase(), 0.005);
    }

    @Test
    void countsThePublishedSentences() {
        // 13 words, 24 syllables, grade 11.3 (widely quoted example; the count is that of the CMU dictionary)
        Ease platypus = Ease.of("The Australian platypus is seemingly a hybrid of a mammal and reptilian "
                + "creature.", "en");
        assertEquals(13, platypus.words());
        assertEquals(1, platypus.sentences());
        assertEquals(24, platypus.syllables(), 2.4, "within a tenth");
        Ease cat = Ease.of("The cat sat on the mat.", "en");
        assertEquals(new Ease(1, 6, 6), cat);
        assertEquals(-1.45, cat.grade(), 0.005);
        assertEquals(2, Ease.of("Count at 7.5 °C. Then wait; count again", "en").sentences() - 1);
    }

    @Test
    void syllablesAgreeWithADictionary() throws IOException {
        int all = 0;
        int same = 0;
        int counted = 0;
        int listed = 0;
        List<String> far = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of(
                "src/test/resources/org/fieldfold/prose/syllables-en.txt"))) {
            if (!line.startsWith("#")) {
                String[] cells = line.split(" ");
                int count = Syllables.of(cells[0], "en");
                int dictionary = Integer.parseInt(cells[1]);
                all++;
                same += count == dictionary ? 1 : 0;
                counted += count;
                listed += dictionary;
                if (Math.abs(count - dictionary) > 1) {
                    far.add(line + " counted " + count);
                }
            }
        }
        assertTrue(all > 1500, all + " words");
        assertTrue(same >= 0.97 * all, same + " of " + all + " as in the dictionary");
        assertEquals(listed, counted, 0.01 * listed, "all together within a hundredth");
        assertEquals(List.of(), far, "none by more than one");
    }

    /** Syllables by the rules of Spanish orthography; common words, value from memory. */
    @ParameterizedTest
    @CsvSource({"papa, 2", "cebolla, 3", "ciudad, 2", "país, 2", "aéreo, 4", "murciélago, 4", "guitarra, 3",
        "pingüino, 3", "queso, 2", "hoja, 2", "insecticida, 5", "búho, 2", "rey, 1", "muy, 1", "cuidado, 3",
        "teoría, 4", "raíz, 2", "agua, 2", "larva, 2", "etiqueta, 4", "cosecha, 3", "buey, 1", "viuda, 2",
        "leer, 2", "planta, 2", "y, 1", "construcción, 3", "umbral, 2", "trips, 1", "día, 2"})
    void spanishSyllables(String word, int syllables) {
        assertEquals(syllables, Syllables.of(word, "es"), word);
    }
}
