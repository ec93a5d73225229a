package org.fieldfold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** SHA-256 of short texts: FIPS 180-2, appendix B.1, and of nothing, a value that everybody knows. */
class FileHashesTest {
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    private static final String NOTHING = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";

    private final FileHashes hashes = new FileHashes();

    @Test
    void aHashIsThatOfTheBytes() {
        assertEquals(ABC, of("a", "abc"));
        assertEquals(ABC, of("a", "abc"), "read again");
        assertEquals(ABC, of("b", "abc"));
        assertEquals(NOTHING, of("b", ""));
    }

    /** Of the same length, so that only its checks tell. */
    @Test
    void aFileThatWasSavedBetweenIsHashedAgain() {
        assertEquals(ABC, of("a", "abc"));
        assertEquals(Sha256.of("acb".getBytes(StandardCharsets.UTF_8)), of("a", "acb"));
        assertEquals(ABC, of("a", "abc"));
    }

    private String of(String file, String text) {
        return hashes.of(Path.of(file), text.getBytes(StandardCharsets.UTF_8));
    }
}
