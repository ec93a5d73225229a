package org.fieldfold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** SHA-256 of short texts: FIPS 180-2, appendix B.1, and of nothing, a value that everybody knows. */
class FileHashesTest {
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    private static final String NOTHING = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";

    private FileHashes hashes = new FileHashes();

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

    /** By length and checks alone: what was written down is believed, and so shows that nothing was hashed. */
    @Test
    void aLaterProcessHashesOnlyWhatHasChanged() {
        of("a b", "abc");
        of("b", "");
        of("c", "abc");
        String written = new String(hashes.bytes().orElseThrow(), StandardCharsets.UTF_8);
        hashes = new FileHashes(written.replace(ABC, "0".repeat(64)).getBytes(StandardCharsets.UTF_8));
        assertEquals("0".repeat(64), of("a b", "abc"));
        assertEquals(Sha256.of("acb".getBytes(StandardCharsets.UTF_8)), of("c", "acb"));
        assertEquals(NOTHING, of("b", ""));
        hashes = new FileHashes(hashes.bytes().orElseThrow());
        of("a b", "abc");
        of("c", "acb");
        assertEquals(2, new String(hashes.bytes().orElseThrow(), StandardCharsets.UTF_8).lines().count(),
                "what nobody asked for is forgotten");
        of("b", "");
        assertEquals(Optional.empty(), hashes.bytes(), "as it was written down");
    }

    @Test
    void otherBytesAreNotBelieved() {
        for (String other : List.of("", "3", "3 x y a", "\n\n", "3 1 2")) {
            hashes = new FileHashes(other.getBytes(StandardCharsets.UTF_8));
            assertEquals(ABC, of("a", "abc"));
        }
    }

    private String of(String file, String text) {
        return hashes.of(Path.of(file), text.getBytes(StandardCharsets.UTF_8));
    }
}
