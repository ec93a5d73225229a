package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The cases in folded.txt are read by the browser as well (PhoneTest): both fold alike. */
class FoldedTest {
    static List<String[]> cases() throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/org/fieldfold/handbook/folded.txt")).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#")).map(line -> line.split(" => ", -1))
                .toList();
    }

    /** Canonical decomposition as in Unicode Standard Annex 15, table 1 (angstrom sign, o with circumflex). */
    @Test
    void wordsFoldAsTheCasesSay() throws IOException {
        for (String[] one : cases()) {
            assertEquals(one[1], String.join(" ", Folded.words(one[0])), one[0]);
        }
    }
}
