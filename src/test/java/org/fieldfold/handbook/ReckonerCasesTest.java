package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The cases to which the script is held stay what the compiler reckons; {@code -Dfieldfold.refresh=true} writes them
 * anew. The formulas themselves are held to published tables in the tests of {@code scouting}; the browser runs the
 * same file (PhoneTest).
 */
class ReckonerCasesTest {
    static final Path FILE = Path.of("src/test/resources/org/fieldfold/handbook/reckoner-cases.json");

    @Test
    void theCasesAreWhatTheCompilerReckons() throws IOException {
        if (Boolean.getBoolean("fieldfold.refresh")) {
            Files.writeString(FILE, ReckonerCases.json());
        }
        assertEquals(Files.readString(FILE), ReckonerCases.json());
    }
}
